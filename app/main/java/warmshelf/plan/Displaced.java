package warmshelf.plan;

import java.util.Set;
import java.util.UUID;
import warmshelf.allocation.SpaceWish;
import warmshelf.placing.LyingStay;

/**
 * A stay that needs another place, because its mat cannot be used.
 *
 * @param wish when and how long it must lie elsewhere, at which warmth
 * @param near the mats at its own site, which are taken first
 */
record Displaced(LyingStay lying, SpaceWish wish, Set<UUID> near) {
    UUID id() {
        return lying.stay().id();
    }
}
