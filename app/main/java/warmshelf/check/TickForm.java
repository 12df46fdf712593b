package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;
import warmshelf.sowing.CompostStore;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Problem;
import warmshelf.sowing.Sowing;
import warmshelf.words.FormReader;

/** Reads a tick as typed into a checked one. */
final class TickForm {
    static final int LONGEST_NOTE = 1000;
    static final int OLDEST_DAYS = 60;

    private final FormReader reader;
    private final Sowing sowing;
    private final LocalDate today;
    private final EntryIds ids;

    /** @param ids where the form brings no id of its own */
    TickForm(Map<String, List<String>> typed, Sowing sowing, LocalDate today, EntryIds ids) {
        this.reader = new FormReader(typed);
        this.sowing = sowing;
        this.today = today;
        this.ids = ids;
    }

    FormReader reader() {
        return reader;
    }

    /** The tick, or empty when something typed cannot be taken; the reader then has the sentences. */
    Optional<Tick> tick() {
        EntryStep step = step();
        LocalDate seenOn = seenOn();
        UUID id = uuid("id", SAY::idUnfit).orElseGet(() -> ids.of(reader, sowing.id(), seenOn));
        // A count that is left empty was not made; the button 'nothing yet' sends the count as it was.
        Integer sprouted = count(reader.text("nothing").isEmpty() ? "sprouted" : "nothing", SAY.sproutedField());
        Integer moved = count("moved", SAY.movedField());
        Integer lost = count("lost", SAY.lostField());
        Tick tick = new Tick(
                id,
                step,
                seenOn,
                sprouted,
                moved,
                lost,
                reader.ticked("finished"),
                problem(),
                reader.optionalText("note", SAY.noteField(), LONGEST_NOTE),
                step == EntryStep.TAKEN_HOME ? null : lightPlace(),
                uuid("supersedes", SAY::correctedUnfit).orElse(null),
                step == EntryStep.TAKEN_HOME || reader.text("lightPlace").equals("home"),
                null,
                reader.optionalText("compost", "The compost", CompostStore.LONGEST),
                count("giveAway", SAY.giveAwayField()),
                null);
        return reader.ok() ? Optional.of(tick) : Optional.empty();
    }

    private EntryStep step() {
        String word = reader.choice(
                "step",
                SAY.stepField(),
                Arrays.stream(EntryStep.values()).map(EntryStep::word).toList());
        return reader.ok() ? EntryStep.named(word) : EntryStep.LOOK;
    }

    private LocalDate seenOn() {
        if (reader.text("seenOn").isEmpty()) {
            return today;
        }
        LocalDate day = reader.date("seenOn", SAY.dayField());
        if (day.isAfter(today)) {
            reader.refuse("seenOn", SAY.dayToCome(day, today));
        } else if (day.isBefore(today.minusDays(OLDEST_DAYS))) {
            reader.refuse("seenOn", SAY.dayTooOld(day, OLDEST_DAYS));
        }
        return day;
    }

    private @Nullable Integer count(String field, String label) {
        return reader.optionalWholeNumber(field, label, 0, sowing.seeds()).orElse(null);
    }

    private @Nullable Problem problem() {
        if (reader.text("problem").isEmpty()) {
            return null;
        }
        String word = reader.choice(
                "problem",
                SAY.problemField(),
                Arrays.stream(Problem.values()).map(Problem::word).toList());
        return reader.problems().containsKey("problem") ? null : Problem.named(word);
    }

    private Tick.@Nullable LightPlace lightPlace() {
        String typed = reader.text("lightPlace");
        if (typed.isEmpty() || typed.equals("home")) {
            return null;
        }
        try {
            int slash = typed.indexOf('/');
            UUID place = UUID.fromString(typed.substring(0, Math.max(0, slash)));
            int quarter = Integer.parseInt(typed.substring(slash + 1));
            return new Tick.LightPlace(place, new Slot(quarter, trayQuarters()));
        } catch (IllegalArgumentException malformed) {
            reader.refuse("lightPlace", SAY.lightPlaceUnfit());
            return null;
        }
    }

    /** Seed moved out of a bag lies in half a tray of cells from then on. */
    private int trayQuarters() {
        return sowing.quartersUnderLight();
    }

    private Optional<UUID> uuid(String field, Supplier<String> unfit) {
        String text = reader.text(field);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException malformed) {
            reader.refuse(field, unfit.get());
            return Optional.empty();
        }
    }
}
