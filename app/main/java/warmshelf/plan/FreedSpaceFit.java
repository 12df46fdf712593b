package warmshelf.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import warmshelf.allocation.FirstFit;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceWish;
import warmshelf.allocation.WarmDays;

/** Finds out which waiting requests fit into room that was left early. */
final class FreedSpaceFit {
    private final SpaceCalendar board;
    private final LocalDate today;
    private final Map<UUID, MatSpace> mats;

    FreedSpaceFit(SpaceCalendar board, LocalDate today) {
        this.board = board;
        this.today = today;
        mats = board.mats().stream().collect(Collectors.toMap(MatSpace::id, mat -> mat));
    }

    /**
     * Room for one request.
     *
     * @param placeNumber on its mat
     */
    public record Fit(MatSpace mat, int placeNumber, PlaceAndDays spot, WarmDays warm) {}

    /** The room freed last that the request fits into, its start as near to its ideal day as may be. */
    Optional<Fit> fit(SpaceWish wish, List<FreedSpaceStore.Freed> freed) {
        return freed.stream().flatMap(room -> into(wish, room).stream()).findFirst();
    }

    private Optional<Fit> into(SpaceWish wish, FreedSpaceStore.Freed room) {
        MatSpace mat = mats.get(room.matId());
        LocalDate earliest = later(later(wish.earliest(), room.from()), today);
        LocalDate latest = earlier(wish.latest(), room.to().minusDays(1));
        if (mat == null || earliest.isAfter(latest)) {
            return Optional.empty();
        }
        LocalDate ideal = earlier(later(wish.ideal(), earliest), latest);
        SpaceWish within = new SpaceWish(
                wish.sowingId(),
                wish.quarters(),
                earliest,
                ideal,
                latest,
                wish.band(),
                wish.needsLight(),
                wish.daysAt());
        return new FirstFit(board, today)
                .offerOn(mat, room.placeId(), within)
                .map(offer -> new Fit(mat, room.placeNumber(), offer.spot(), offer.warm()));
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? other : one;
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
