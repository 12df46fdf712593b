package warmshelf.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceOffer;

/**
 * First fit for everything that lies on a mat which cannot be used, in several orders, of which the one that places most is taken.
 * A plan is held against it, since a plan asks for one length of stay and first fit follows a mat that is turned under a stay.
 */
final class DisplacedFit {
    private static final Comparator<Displaced> SOONEST = Comparator.<Displaced, LocalDate>comparing(
                    each -> each.wish().ideal())
            .thenComparing(Displaced::id);
    private static final Comparator<Displaced> LARGEST =
            Comparator.<Displaced>comparingInt(each -> -each.wish().quarters()).thenComparing(SOONEST);
    private static final Comparator<Displaced> SMALLEST =
            Comparator.<Displaced>comparingInt(each -> each.wish().quarters()).thenComparing(SOONEST);

    private DisplacedFit() {}

    /** The places found, by stay; each stands beside everything as it lies now, and what has none is left out. */
    static Map<UUID, SpaceOffer> places(DisplacedBoard room) {
        Map<UUID, SpaceOffer> best = Map.of();
        for (Comparator<Displaced> order : List.of(SOONEST, LARGEST, SMALLEST)) {
            Map<UUID, SpaceOffer> found =
                    inOrder(room, room.displaced().stream().sorted(order).toList());
            if (found.size() > best.size()) {
                best = found;
            }
        }
        return best;
    }

    private static Map<UUID, SpaceOffer> inOrder(DisplacedBoard room, List<Displaced> order) {
        Map<UUID, SpaceOffer> found = new LinkedHashMap<>();
        for (Displaced each : order) {
            SpaceCalendar board = room.around(each, Map.of());
            found.values().forEach(board::accept);
            room.best(each, board).ifPresent(offer -> found.put(each.id(), offer));
        }
        return found;
    }
}
