package warmshelf.program;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A token as its page lists it; the secret itself is kept nowhere.
 *
 * @param owner the name of who made it
 * @param madeOn in the group's time zone
 * @param endsOn the last day on which it works; null: until it is revoked
 * @param lastUsedOn null: it was not used yet
 */
public record ProgramToken(
        UUID id,
        String name,
        String owner,
        List<TokenScope> scopes,
        LocalDate madeOn,
        @Nullable LocalDate endsOn,
        @Nullable LocalDate lastUsedOn) {

    public boolean hasEnded(LocalDate today) {
        return hasEnded(endsOn, today);
    }

    /** Whether the last day of a token has gone by. */
    static boolean hasEnded(@Nullable LocalDate endsOn, LocalDate today) {
        return endsOn != null && today.isAfter(endsOn);
    }
}
