package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A minimum-maximum thermometer that people read in the morning.
 *
 * @param memberId whose garden it hangs in; null: it is the group's
 * @param owner that member's name
 * @param retired whether it is no longer read
 */
public record Thermometer(
        UUID id,
        String name,
        @Nullable UUID memberId,
        @Nullable String owner,
        GardenPoint point,
        boolean retired) {

    /** A private one is for its owner and for coordinators. Whoever may see one may note what it showed. */
    public boolean mayBeSeenBy(UUID visitor, boolean coordinator) {
        return mayBeSeenBy(memberId, visitor, coordinator);
    }

    /** The same of one that hangs in somebody's garden; null: it is the group's. */
    static boolean mayBeSeenBy(@Nullable UUID owner, UUID visitor, boolean coordinator) {
        return coordinator || owner == null || owner.equals(visitor);
    }

    public boolean mayBeRetiredBy(UUID visitor, boolean coordinator) {
        return coordinator || visitor.equals(memberId);
    }

    /** For example 'mine', 'the group’s' or 'Tom Okafor'. */
    public String whose(UUID visitor) {
        if (owner == null || memberId == null) {
            return SAY.theGroups();
        }
        return memberId.equals(visitor) ? SAY.mine() : owner;
    }
}
