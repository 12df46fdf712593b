package warmshelf.surplus;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;

/**
 * Seedlings of a sowing to give away, with who takes some.
 *
 * @param offered how many in all
 * @param free how many nobody takes yet; 0 once it has ended
 * @param closed why nothing of it can be offered or taken now; null: it can
 * @param where they stand today; null: nowhere of the group's
 * @param takings in the order in which they were taken
 */
public record Surplus(
        Sowing sowing,
        Progress progress,
        int offered,
        int free,
        @Nullable SurplusRefusal closed,
        @Nullable String where,
        List<Taking> takings) {
    public Surplus {
        takings = List.copyOf(takings);
    }

    /** Whether a visitor may offer them, and say that they were handed over, for the grower. */
    public boolean isOf(UUID visitor, boolean coordinator) {
        return coordinator || isGrownBy(visitor);
    }

    public boolean isGrownBy(UUID member) {
        return sowing.grower().memberId().equals(member);
    }

    /** How many somebody takes or has. */
    public int taken() {
        return takings.stream().filter(Taking::stands).mapToInt(Taking::plants).sum();
    }

    /** What is still to be handed over. */
    public List<Taking> promised() {
        return takings.stream().filter(Taking::isPromised).toList();
    }
}
