package warmshelf.frost.garden;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A thermometer that was hung up.
 *
 * @param memberId whose garden it hangs in; null: it is the group's
 */
public record NewThermometer(String name, @Nullable UUID memberId, GardenPoint point) {}
