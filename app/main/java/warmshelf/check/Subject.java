package warmshelf.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Stay;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.TimelineStep;

/**
 * A sowing as the round sees it on a day.
 *
 * @param stay where it lies, or is next to lie; null: nowhere of the group's
 * @param expected the days from sowing by which a twentieth, half and all but a twentieth of the seed is expected; null
 *     where no temperature is known
 */
public record Subject(
        Sowing sowing,
        Progress progress,
        @Nullable Stay stay,
        Timeline timeline,
        @Nullable Expected expected) {

    /** Days after sowing: first ones, half, nearly all. */
    public record Expected(double first, double half, double nearlyAll) {}

    Optional<TimelineStep> step(Step step) {
        return timeline.steps().stream().filter(each -> each.step() == step).findFirst();
    }

    /** Days since it was sown; the day of sowing is day 0. Before sowing 0 too. */
    public int dayCount(LocalDate today) {
        LocalDate sown = progress.seen().sown();
        return sown == null ? 0 : (int) Math.max(0, ChronoUnit.DAYS.between(sown, today));
    }
}
