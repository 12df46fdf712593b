package warmshelf.paper;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import warmshelf.guide.PracticeDays;
import warmshelf.sowing.History;
import warmshelf.sowing.Sowing;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;

/**
 * How long some plants stand outside on each day of their hardening off: an hour or two on the first day, longer each day, all
 * day at last, and overnight before they are planted out.
 *
 * @param begins the day on which they go out first
 * @param begun whether they have
 * @param plantingOut the day on which they are planted out
 * @param nightMinimumC nights should stay above this; null: not known
 */
record HardeningPlan(
        Sowing sowing,
        LocalDate begins,
        boolean begun,
        LocalDate plantingOut,
        @Nullable Double nightMinimumC,
        List<Day> days) {
    private static final PracticeDays DAYS = PracticeDays.of("hardening off", "days");
    private static final PracticeDays FIRST_DAY = PracticeDays.of("hardening off", "hours of the first day");
    private static final PracticeDays FULL_DAY = PracticeDays.of("hardening off", "hours of a full day");
    /** Days at the end on which the plants stay out all day and overnight. */
    private static final int NIGHTS_OUT =
            PracticeDays.of("hardening off", "nights out").least();

    /**
     * One day.
     *
     * @param hours outside
     * @param overnight stays out, unless the night is too cold
     */
    public record Day(LocalDate day, int hours, boolean overnight) {}

    /** The days of a sowing that hardens off, or begins to until a day; empty for others. */
    static Optional<HardeningPlan> of(History history, Timeline timeline, LocalDate until) {
        Optional<TimelineStep> start = timeline.step(Step.HARDEN_OFF);
        Optional<TimelineStep> out = timeline.step(Step.PLANT_OUT);
        if (start.isEmpty() || out.isEmpty() || out.get().done() != null) {
            return Optional.empty();
        }
        LocalDate done = start.get().done();
        LocalDate begins = done == null ? start.get().ideal() : done;
        return begins.isAfter(until)
                ? Optional.empty()
                : Optional.of(new HardeningPlan(
                        history.sowing(),
                        begins,
                        done != null,
                        out.get().ideal(),
                        history.sowing().crop().nightMinimumC(),
                        days(begins, out.get().ideal())));
    }

    /** The days from the first outside to the one before planting out; fewer and more than is usual are both cut to it. */
    static List<Day> days(LocalDate begins, LocalDate plantingOut) {
        int between = (int) java.time.temporal.ChronoUnit.DAYS.between(begins, plantingOut);
        int count = Math.max(DAYS.least(), Math.min(DAYS.most(), between));
        return IntStream.range(0, count)
                .mapToObj(index -> new Day(begins.plusDays(index), hours(index, count), index >= count - NIGHTS_OUT))
                .toList();
    }

    /** Even steps from the first day's hours to a full day's, rounded down, so that no day leaps. */
    private static int hours(int index, int count) {
        int steps = Math.max(1, count - NIGHTS_OUT);
        int gained = (FULL_DAY.least() - FIRST_DAY.most()) * Math.min(index, steps) / steps;
        return FIRST_DAY.most() + gained;
    }
}
