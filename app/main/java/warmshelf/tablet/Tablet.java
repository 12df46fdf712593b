package warmshelf.tablet;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A tablet at a rack, in the group's time zone.
 *
 * @param site whose round it shows, by its name
 * @param madeBy what the coordinator who made it is called
 * @param lastSeen to the hour; null: it has not been opened yet
 * @param opens whether it is signed in now
 * @param endedBy null: it has not been ended
 * @param endedOn null: it has not been ended
 */
public record Tablet(
        UUID id,
        String name,
        String site,
        String madeBy,
        LocalDate madeOn,
        @Nullable LocalDateTime lastSeen,
        boolean opens,
        @Nullable String endedBy,
        @Nullable LocalDate endedOn) {

    public boolean ended() {
        return endedOn != null;
    }
}
