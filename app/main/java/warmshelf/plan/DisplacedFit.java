package warmshelf.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Predicate;
import warmshelf.allocation.FirstFit;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceWish;
import warmshelf.placing.LyingStay;

/**
 * Finds other places for everything that lies on a mat which cannot be used: first fit in several orders, of which the one that
 * places most is taken. What it finds stands beside everything else that lies anywhere, so each can be taken alone, some of
 * them, or all.
 */
final class DisplacedFit {
    private static final Comparator<Displaced> SOONEST = Comparator.<Displaced, LocalDate>comparing(
                    each -> each.wish().ideal())
            .thenComparing(each -> each.lying().stay().id());
    private static final Comparator<Displaced> LARGEST =
            Comparator.<Displaced>comparingInt(each -> -each.wish().quarters()).thenComparing(SOONEST);
    private static final Comparator<Displaced> SMALLEST =
            Comparator.<Displaced>comparingInt(each -> each.wish().quarters()).thenComparing(SOONEST);

    private final LocalDate today;

    DisplacedFit(LocalDate today) {
        this.today = today;
    }

    /**
     * A stay that needs another place.
     *
     * @param wish when and how long, at which warmth
     * @param board everything else, as it lies now
     * @param near the mats at its own site, which are taken first
     */
    record Displaced(LyingStay lying, SpaceWish wish, SpaceCalendar board, Predicate<MatSpace> near) {}

    /** The places found, by stay; what has none is left out. */
    Map<UUID, SpaceOffer> places(List<Displaced> displaced) {
        Map<UUID, SpaceOffer> best = Map.of();
        for (Comparator<Displaced> order : List.of(SOONEST, LARGEST, SMALLEST)) {
            Map<UUID, SpaceOffer> found =
                    inOrder(displaced.stream().sorted(order).toList());
            if (found.size() > best.size()) {
                best = found;
            }
        }
        return best;
    }

    private Map<UUID, SpaceOffer> inOrder(List<Displaced> displaced) {
        Map<UUID, SpaceOffer> found = new LinkedHashMap<>();
        for (Displaced each : displaced) {
            SpaceCalendar board = each.board().copy();
            found.values().forEach(board::accept);
            List<SpaceOffer> offers = new ArrayList<>(
                    new FirstFit(board, today).offers(each.wish(), board.mats().size()));
            offers.sort(Comparator.comparingInt((SpaceOffer offer) -> Math.abs(offer.shiftDays()))
                    .thenComparing(offer -> !each.near().test(offer.mat())));
            if (!offers.isEmpty()) {
                found.put(each.lying().stay().id(), offers.get(0));
            }
        }
        return found;
    }
}
