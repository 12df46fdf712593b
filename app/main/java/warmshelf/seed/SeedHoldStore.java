package warmshelf.seed;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;

/** Which sowings hold seed of lots; told by whoever keeps the sowings. */
public interface SeedHoldStore {
    /** What sowings that are not sown yet will use of these lots, the oldest first; lots without any are missing. */
    Map<UUID, List<SeedHold>> holds(DSLContext sql, Collection<UUID> lotIds);
}
