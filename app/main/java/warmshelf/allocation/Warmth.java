package warmshelf.allocation;

import java.util.UUID;

/**
 * What a stay needs of its mat.
 *
 * @param celsius the set-point on every day of the stay
 * @param band the set-points that suit what lies there
 */
record Warmth(UUID matId, int celsius, Band band) {}
