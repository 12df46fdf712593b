package warmshelf.program;

import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A token that somebody wants.
 *
 * @param endsOn the last day on which it is to work; null: until it is revoked
 */
record NewToken(
        String name, Set<TokenScope> scopes, @Nullable LocalDate endsOn) {}
