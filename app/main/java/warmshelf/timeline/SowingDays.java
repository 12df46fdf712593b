package warmshelf.timeline;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.timeline.PlantingOut.ByFrost;

/**
 * How long a sowing goes on making sense: the plants go out as soon as they are big enough.
 *
 * @param usual the usual days of sowing
 * @param before the day on which the sowing for autumn begins, which no earlier sowing reaches; null: there is none
 */
record SowingDays(
        Crop crop,
        SeasonEnd end,
        DateWindow usual,
        DateWindow plantingOut,
        ExpectedEmergence emergence,
        @Nullable LocalDate before) {
    private static final int DAYS_OF_A_YEAR = 366;

    static SowingDays of(
            TimelineQuestion question, DateWindow plantingOut, DateWindow usual, ExpectedEmergence emergence) {
        return new SowingDays(
                question.crop(),
                SeasonEnd.of(question, plantingOut),
                usual,
                plantingOut,
                emergence,
                autumnBegins(question, emergence).orElse(null));
    }

    private static Optional<LocalDate> autumnBegins(TimelineQuestion question, ExpectedEmergence emergence) {
        return question.plantingOut() instanceof ByFrost frost && frost.part() == SeasonPart.SPRING
                ? BeforeFirstFrost.of(question.crop(), SeasonPart.AUTUMN, frost.dates())
                        .map(autumn -> SowingWindow.daysBefore(autumn.days(), question.crop(), emergence)
                                .earliest())
                : Optional.empty();
    }

    /** When plants go out that are sown on a day. */
    LocalDate plantedOut(LocalDate sown) {
        return DateWindow.later(plantingOut.ideal(), sown.plusDays(SowingWindow.daysUntilReady(crop, emergence)));
    }

    /** The last day from which the plants still come to something; where it is past, that of the quickest kinds. */
    LocalDate lastSensible(LocalDate today) {
        LocalDate last = last(usual.latest(), end::leavesUsualKindsTime);
        return today.isAfter(last) ? last(usual.latest(), end::leavesTimeFor) : last;
    }

    /** The last day, from a day on, from which they surely do, as far as that is known; empty where that day is too late. */
    Optional<LocalDate> lastSure(LocalDate from) {
        boolean inTime = before == null || from.isBefore(before);
        return inTime && end.surelyLeavesTimeFor(from, plantedOut(from))
                ? Optional.of(last(from, end::surelyLeavesTimeFor))
                : Optional.empty();
    }

    private LocalDate last(LocalDate from, BiPredicate<LocalDate, LocalDate> worthIt) {
        LocalDate last = from;
        for (int day = 0; day < DAYS_OF_A_YEAR; day++) {
            LocalDate next = last.plusDays(1);
            boolean another = before != null && !next.isBefore(before);
            if (another || !worthIt.test(next, plantedOut(next))) {
                return last;
            }
            last = next;
        }
        return last;
    }
}
