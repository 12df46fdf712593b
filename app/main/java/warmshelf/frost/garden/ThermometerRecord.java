package warmshelf.frost.garden;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.minima.DailyMinima;

/**
 * All nights noted of one thermometer.
 *
 * @param memberId whose garden it hangs in; null: a place of the group's
 */
public record ThermometerRecord(
        UUID id, String name, @Nullable UUID memberId, GardenPoint point, DailyMinima minima) {}
