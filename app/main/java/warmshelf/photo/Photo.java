package warmshelf.photo;

import java.util.UUID;

/**
 * A picture that is kept with an entry or a lot, without its bytes.
 *
 * @param of the entry that tells of what it shows, or the lot whose packet it shows
 * @param width in pixels
 * @param height in pixels
 * @param by who added it
 */
public record Photo(UUID id, UUID of, int width, int height, UUID by, String byName) {}
