package warmshelf.surplus;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Plants that somebody takes of those given away.
 *
 * @param member their name
 * @param handedOver whether either side confirmed that they have them
 * @param endedBy who gave them back or kept them after all, by name; null: it stands
 */
public record Taking(
        UUID id,
        UUID sowingId,
        UUID memberId,
        String member,
        int plants,
        boolean handedOver,
        @Nullable UUID endedById,
        @Nullable String endedBy) {
    public boolean stands() {
        return endedById == null;
    }

    /** Whether they are still to be handed over. */
    public boolean isPromised() {
        return stands() && !handedOver;
    }
}
