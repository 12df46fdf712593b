package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.timeline.Seen;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;
import warmshelf.words.Counted;
import warmshelf.words.DayWords;

/**
 * How what was seen moved the dates of a sowing: the timeline after each entry, held against the one before it. All are worked
 * out at the same temperature and from the same figures, so only what was seen, and waiting, can move them.
 */
final class Redating {
    private final Dates dates;
    private final Sowing sowing;

    /** The timeline that follows from what had been seen by a day. */
    interface Dates {
        Optional<Timeline> on(LocalDate day, Seen seen);
    }

    Redating(Sowing sowing, Dates dates) {
        this.sowing = sowing;
        this.dates = dates;
    }

    /**
     * One thing that moved what was still to come.
     *
     * @param because what was seen, and how much earlier or later than expected
     * @param shifts the steps that moved by it, in order
     */
    public record Move(LocalDate on, String because, List<Shift> shifts) {}

    /** A step that moved. */
    public record Shift(Step step, LocalDate from, LocalDate to) {
        /** For example 'Plant out: Mon 24 May, 4 days later'. */
        public String words() {
            return SAY.stepMoved(step.title(), DayWords.day(to), laterOrSooner(from, to));
        }
    }

    /**
     * The moves, the oldest first; entries that moved nothing are left out.
     *
     * @param asked the day on which the sowing was asked for
     */
    List<Move> moves(List<Entry> entries, LocalDate asked, LocalDate today) {
        List<Entry> standing = Entry.standing(entries);
        List<Move> moves = new ArrayList<>();
        List<Entry> soFar = new ArrayList<>();
        LocalDate day = standing.isEmpty() || asked.isBefore(standing.get(0).seenOn())
                ? asked
                : standing.get(0).seenOn();
        Seen seen = Seen.nothing();
        for (Entry entry : standing) {
            soFar.add(entry);
            Seen after = Progress.of(sowing.method(), sowing.seeds(), soFar).seen();
            if (!after.equals(seen)) {
                addMove(moves, day, seen, entry.seenOn(), after, because(entry, day, seen, after));
                day = entry.seenOn();
                seen = after;
            }
        }
        if (!standing.isEmpty()) {
            addMove(moves, day, seen, today, seen, SAY.nothingMore(DayWords.day(today)));
        }
        return moves;
    }

    private void addMove(
            List<Move> moves, LocalDate day, Seen seen, LocalDate dayAfter, Seen seenAfter, String because) {
        Optional<Timeline> before = dates.on(day, seen);
        Optional<Timeline> after = dates.on(dayAfter, seenAfter);
        if (before.isEmpty() || after.isEmpty()) {
            return;
        }
        List<Shift> shifts = after.get().steps().stream()
                .filter(step -> step.done() == null)
                .flatMap(step -> before.get().step(step.step()).stream()
                        .filter(was -> was.done() == null && !was.ideal().equals(step.ideal()))
                        .map(was -> new Shift(step.step(), was.ideal(), step.ideal())))
                .toList();
        if (!shifts.isEmpty()) {
            moves.add(new Move(dayAfter, because, shifts));
        }
    }

    private String because(Entry entry, LocalDate day, Seen before, Seen after) {
        boolean firstShown = before.firstSprout() == null && after.firstSprout() != null;
        String what = entry.step() == EntryStep.LOOK && firstShown
                ? SAY.firstSprouts()
                : entry.step().done();
        Step step = stepOf(entry, firstShown);
        String seen = SAY.seenOn(
                what.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + what.substring(1),
                DayWords.day(entry.seenOn()));
        return step == null
                ? seen
                : dates.on(day, before)
                        .flatMap(timeline -> timeline.step(step))
                        .map(TimelineStep::ideal)
                        .filter(expected -> !expected.equals(entry.seenOn()))
                        .map(expected -> SAY.thanExpected(seen, laterOrSooner(expected, entry.seenOn())))
                        .orElse(seen);
    }

    private @Nullable Step stepOf(Entry entry, boolean firstShown) {
        return switch (entry.step()) {
            case CHILLED -> Step.CHILL;
            case SOAKED -> Step.SOAK;
            case SOWN -> Step.SOW;
            case MOVED_TO_CELLS -> Step.MOVE_TO_CELLS;
            case OFF_HEAT, TAKEN_HOME -> Step.OFF_HEAT;
            case UNDER_LIGHT -> Step.LIGHT;
            case FIRST_FEED -> Step.FIRST_FEED;
            case POTTED_ON -> Step.POT_ON;
            case TRIMMED -> Step.TRIM;
            case HARDENING_OFF -> Step.HARDEN_OFF;
            case PLANTED_OUT -> Step.PLANT_OUT;
            case LOOK -> firstShown ? Step.OFF_HEAT : Step.LIGHT;
            case GAVE_UP, NOT_RECORDED, UNDONE, READING -> null;
        };
    }

    private static String laterOrSooner(LocalDate from, LocalDate to) {
        long days = ChronoUnit.DAYS.between(from, to);
        return Counted.daysMoved(days, SAY.later(), SAY.sooner());
    }
}
