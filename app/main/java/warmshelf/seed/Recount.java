package warmshelf.seed;

import org.jspecify.annotations.Nullable;

/**
 * What the owner corrects on a lot.
 *
 * @param seedsLeft null: nobody has counted
 */
public record Recount(@Nullable Integer seedsLeft, boolean treated, String note, SeedSource source, Storage storage) {}
