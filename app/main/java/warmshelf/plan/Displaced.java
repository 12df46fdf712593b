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
 * @param closed the mats that are not for it, because a rack is held or a quarantine shelf stays apart
 */
record Displaced(LyingStay lying, SpaceWish wish, Set<UUID> near, Set<UUID> closed) {
    /** With no mat closed to it. */
    Displaced(LyingStay lying, SpaceWish wish, Set<UUID> near) {
        this(lying, wish, near, Set.of());
    }

    UUID id() {
        return lying.stay().id();
    }
}
