package warmshelf.duty;

import java.time.LocalTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Who looks at a site today.
 *
 * @param doneBy the hour by which its checks are done; null: none is set
 * @param onDuty null: nobody
 * @param standIn who looks when the person on duty does not; null: nobody
 */
public record SiteWatch(
        Named site,
        @Nullable LocalTime doneBy,
        @Nullable Named onDuty,
        @Nullable Named standIn) {

    boolean standsIn(UUID member) {
        return standIn != null && standIn.id().equals(member);
    }

    boolean isPast(LocalTime now) {
        return doneBy != null && !now.isBefore(doneBy);
    }
}
