package warmshelf.placing;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;

/**
 * Where and when a coordinator wants a stay to lie instead.
 *
 * @param version of the stay as the coordinator saw it
 * @param from the first day there; for what lies there already, the day on which it is carried
 * @param celsius the set-point wished; null: the mat's, and under a light
 */
public record StayMove(
        UUID stayId,
        int version,
        UUID placeId,
        Slot slot,
        LocalDate from,
        @Nullable Double celsius) {}
