package warmshelf.seed;

import java.util.UUID;

/**
 * Seed that a sowing will use and that has not been sown yet.
 *
 * @param member whose sowing it is
 * @param waitsForOwner whether the lot's owner has not answered yet
 */
public record SeedHold(UUID sowingId, UUID memberId, String member, int seeds, boolean waitsForOwner) {}
