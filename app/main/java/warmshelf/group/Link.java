package warmshelf.group;

import java.time.OffsetDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A link that lets someone in: to open the group, to join it, or to sign in.
 *
 * @param hash names the link without opening it
 * @param memberId whom it signs in, for the purpose sign-in
 * @param madeBy what the member who made it is called; null for the program itself
 * @param usesLeft null: any number of times until it expires
 */
public record Link(
        String hash,
        LinkPurpose purpose,
        boolean coordinator,
        @Nullable UUID memberId,
        String note,
        @Nullable String madeBy,
        OffsetDateTime expiresAt,
        @Nullable Integer usesLeft) {

    public boolean used() {
        return usesLeft != null && usesLeft == 0;
    }

    public boolean open(OffsetDateTime now) {
        return !used() && expiresAt.isAfter(now);
    }

    public boolean forSigningIn() {
        return purpose == LinkPurpose.SIGN_IN;
    }

    /** Whether it may be used once only. */
    public boolean oneUse() {
        return usesLeft != null;
    }
}
