package warmshelf.allocation;

import java.util.UUID;

/**
 * What a stay needs of its mat.
 *
 * @param days the set-points of its days
 * @param band the set-points that suit what lies there
 */
public record WarmthNeed(UUID matId, WarmDays days, Band band) {}
