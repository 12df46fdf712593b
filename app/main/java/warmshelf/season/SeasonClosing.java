package warmshelf.season;

import java.time.OffsetDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A season that was closed.
 *
 * @param closedBy what others call who closed it
 * @param nextSeason the one opened after it; null: none yet
 */
record SeasonClosing(
        UUID id,
        int season,
        String closedBy,
        OffsetDateTime closedAt,
        @Nullable Integer nextSeason,
        ClosedFigures figures) {
    /**
     * The figures of a season as they were when it was closed.
     *
     * @param asked sowings that were asked for
     * @param members who sowed
     * @param seeds that were sown
     * @param counted seeds of sowings that were counted and waited for no longer, of which {@code came} came up
     * @param plantsOut plants that went out into their growers' gardens
     * @param plantsGiven plants that went to other members
     */
    record ClosedFigures(
            int asked,
            int members,
            int sown,
            int withdrawn,
            int goingOn,
            int seeds,
            int counted,
            int came,
            int plantsOut,
            int plantsGiven,
            int seedlingsLost,
            int givenUp,
            int notRecorded) {}
}
