package warmshelf.supply;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * So much of something that somebody brings, or that lies in the group's cupboard.
 *
 * @param amount in millilitres or pieces
 * @param memberId whose promise it is; null: there already
 * @param memberName the name of whose it is; null: there already
 * @param brought whether it is there
 */
public record Promise(
        UUID id,
        SupplyItem item,
        double amount,
        @Nullable UUID memberId,
        @Nullable String memberName,
        String note,
        boolean brought) {

    /** Whether this person may mark it brought or take it back: whose it is, or a coordinator. */
    boolean mayBeChangedBy(UUID member, boolean coordinator) {
        return coordinator || member.equals(memberId);
    }
}
