package warmshelf.season;

import static warmshelf.season.SeasonTurnSentences.SAY;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.words.DayWords;
import warmshelf.words.FormReader;

/** What became of all that is not over, as typed: one answer for each kind, and others where somebody knows better. */
record SettlingForm(FormReader reader) {
    static final String OUT_ON = "outOn";

    /**
     * What was decided.
     *
     * @param outOn the day on which what was planted out went out
     */
    record Decided(Map<UUID, Settlement> settlements, LocalDate outOn) {}

    /**
     * The form with what is usual.
     *
     * @param early whether tender plants are not out yet: then what is under way goes on
     */
    static SettlingForm proposed(LocalDate today, boolean early) {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        for (OpenKind kind : OpenKind.values()) {
            typed.put(kind.word(), List.of(kind.usual(early).word()));
        }
        typed.put(OUT_ON, List.of(today.toString()));
        return new SettlingForm(new FormReader(typed));
    }

    /** What was decided of each; empty, with the reasons in the reader, where something cannot be. */
    Optional<Decided> decided(List<OpenSowing> open, LocalDate today) {
        Map<OpenKind, Settlement> ofKind = new EnumMap<>(OpenKind.class);
        open.stream()
                .map(OpenSowing::kind)
                .distinct()
                .forEach(kind -> settlement(kind.word(), kind, kind.title()).ifPresent(each -> ofKind.put(kind, each)));
        Map<UUID, Settlement> all = new LinkedHashMap<>();
        for (OpenSowing sowing : open) {
            Settlement own = reader.text(sowing.field()).isEmpty()
                    ? ofKind.get(sowing.kind())
                    : settlement(sowing.field(), sowing.kind(), sowing.title()).orElse(null);
            if (own != null) {
                all.put(sowing.id(), own);
            }
        }
        LocalDate outOn = all.containsValue(Settlement.PLANTED_OUT) ? outOn(today) : today;
        return reader.ok() && outOn != null ? Optional.of(new Decided(all, outOn)) : Optional.empty();
    }

    private @Nullable LocalDate outOn(LocalDate today) {
        LocalDate day = reader.date(OUT_ON, SAY.outOnField());
        if (reader.ok() && day.isAfter(today)) {
            reader.refuse(OUT_ON, SAY.outOnToCome(DayWords.dateAndYear(day), DayWords.dateAndYear(today)));
        }
        return day;
    }

    private Optional<Settlement> settlement(String field, OpenKind kind, String title) {
        String typed = reader.text(field);
        Optional<Settlement> settlement = Settlement.named(typed).filter(kind.settlements()::contains);
        if (settlement.isEmpty()) {
            reader.refuse(field, SAY.chooseSettlement(title));
        }
        return settlement;
    }
}
