package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;

/**
 * The rota as sent: a field 'duty/SITE/DAY' with a member's id for each turn, and 'was/SITE/DAY' with the id that the page
 * showed. A turn that was not touched is no change, whatever has become of it meanwhile.
 */
final class RotaForm {
    static final String DUTY = "duty/";
    private static final String WAS = "was/";
    private static final int MOST_DAYS_AHEAD = 800;

    private final Set<UUID> sites;
    private final Set<UUID> members;
    private final Map<Turn, DutyStore.Holder> rota;
    private final LocalDate today;
    private final FormReader form;

    /** @param rota who has which turn, of the days that may be sent */
    RotaForm(Set<UUID> sites, Set<UUID> members, Map<Turn, DutyStore.Holder> rota, LocalDate today, FormReader form) {
        this.sites = sites;
        this.members = members;
        this.rota = rota;
        this.today = today;
        this.form = form;
    }

    /** The turns that are to change; what cannot be used is refused on the form. */
    List<DutyStore.Change> changes() {
        List<DutyStore.Change> changes = new ArrayList<>();
        for (String field : form.typed().keySet()) {
            if (field.startsWith(DUTY)) {
                DutyStore.Change change = change(field);
                if (change != null) {
                    changes.add(change);
                }
            }
        }
        return changes;
    }

    /** The same for a proposal that is kept: each turn with the member proposed for it. */
    Map<Turn, UUID> proposed() {
        Map<Turn, UUID> proposed = new LinkedHashMap<>();
        for (DutyStore.Change change : changes()) {
            if (change.member() != null) {
                proposed.put(change.turn(), change.member());
            }
        }
        return proposed;
    }

    private DutyStore.@Nullable Change change(String field) {
        try {
            String words = field.substring(DUTY.length());
            Turn turn = Turn.parse(words);
            DutyStore.Holder holder = rota.get(turn);
            UUID now = holder == null ? null : holder.id();
            UUID member = id(form.text(field));
            UUID before = form.typed().containsKey(WAS + words) ? id(form.text(WAS + words)) : now;
            boolean there = sites.contains(turn.site()) && isNear(turn.day());
            if (there && Objects.equals(before, member)) {
                return null;
            }
            if (there && (member == null || members.contains(member))) {
                return isPast(field, turn) ? null : new DutyStore.Change(turn, before, member);
            }
        } catch (IllegalArgumentException malformed) {
            // the sentence below covers it
        }
        form.refuse(field, SAY.lineOutdated());
        return null;
    }

    private boolean isPast(String field, Turn turn) {
        if (turn.day().isBefore(today)) {
            form.refuse(field, SAY.linePast(DayWords.day(turn.day())));
            return true;
        }
        return false;
    }

    private boolean isNear(LocalDate day) {
        return Math.abs(day.toEpochDay() - today.toEpochDay()) <= MOST_DAYS_AHEAD;
    }

    private static @Nullable UUID id(String text) {
        return text.isBlank() ? null : UUID.fromString(text);
    }
}
