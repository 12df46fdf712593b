package warmshelf.photo;

import java.util.UUID;

/**
 * A picture that is kept with an entry, without its bytes.
 *
 * @param entry what it shows was told of in this entry
 * @param width in pixels
 * @param height in pixels
 * @param by who added it
 */
public record Photo(UUID id, UUID entry, int width, int height, UUID by, String byName) {}
