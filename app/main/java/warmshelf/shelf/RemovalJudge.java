package warmshelf.shelf;

import java.util.Optional;

/** Says whether a site, rack, shelf or mat may be deleted: only what nobody ever used, as history stays. */
final class RemovalJudge {
    private RemovalJudge() {}

    /**
     * What is known of its use.
     *
     * @param racks that stand at a site
     * @param lying trays that lie on it today
     * @param booked trays that are to lie on it
     * @param traces whether anything else was ever recorded of it
     */
    record Use(int racks, int lying, int booked, boolean traces) {}

    /** Why not; empty: it may be deleted. */
    static Optional<ShelfRefusal> against(Use use) {
        if (use.racks() > 0) {
            return Optional.of(new ShelfRefusal.RacksStand(use.racks()));
        }
        if (use.lying() > 0) {
            return Optional.of(new ShelfRefusal.TraysLie(use.lying()));
        }
        if (use.booked() > 0) {
            return Optional.of(new ShelfRefusal.TraysBooked(use.booked()));
        }
        return use.traces() ? Optional.of(new ShelfRefusal.WasUsed()) : Optional.empty();
    }
}
