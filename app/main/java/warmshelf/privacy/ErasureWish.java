package warmshelf.privacy;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * How somebody is to be erased.
 *
 * @param photosToo whether the photos that they took go too
 * @param successor who coordinates the group from then on; null: somebody does already
 */
record ErasureWish(boolean photosToo, @Nullable UUID successor) {}
