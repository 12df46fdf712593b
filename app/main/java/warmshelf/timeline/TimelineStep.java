package warmshelf.timeline;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One step of a sowing.
 *
 * @param reason what led to the dates
 * @param done the day on which it really happened; then earliest, ideal and latest are that day
 */
public record TimelineStep(
        Step step,
        LocalDate earliest,
        LocalDate ideal,
        LocalDate latest,
        Reason reason,
        @Nullable LocalDate done) {
    /** The reason in one or two plain sentences with its figures. */
    public String why() {
        return reason.words();
    }
}
