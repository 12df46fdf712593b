package warmshelf.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import warmshelf.allocation.Board;
import warmshelf.allocation.FirstFit;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.Offer;
import warmshelf.allocation.Slot;
import warmshelf.allocation.Spot;
import warmshelf.allocation.Wish;

/** Finds out which waiting requests fit into room that was left early. */
final class FreedFit {
    private final Board board;
    private final LocalDate today;
    private final Map<UUID, MatSpace> mats;
    private final Map<UUID, Board> placeAlone = new HashMap<>();

    FreedFit(Board board, LocalDate today) {
        this.board = board;
        this.today = today;
        mats = board.mats().stream().collect(Collectors.toMap(MatSpace::id, mat -> mat));
    }

    /**
     * Room for one request.
     *
     * @param placeNumber on its mat
     */
    public record Fit(MatSpace mat, int placeNumber, Spot spot, int celsius) {}

    /** The room freed last that the request fits into, its start as near to its ideal day as may be. */
    Optional<Fit> fit(Wish wish, List<FreedStore.Freed> freed) {
        return freed.stream().flatMap(room -> into(wish, room).stream()).findFirst();
    }

    private Optional<Fit> into(Wish wish, FreedStore.Freed room) {
        MatSpace mat = mats.get(room.matId());
        LocalDate earliest = later(later(wish.earliest(), room.from()), today);
        LocalDate latest = earlier(wish.latest(), room.to().minusDays(1));
        if (mat == null || earliest.isAfter(latest)) {
            return Optional.empty();
        }
        LocalDate ideal = earlier(later(wish.ideal(), earliest), latest);
        Wish within = new Wish(wish.sowingId(), wish.quarters(), earliest, ideal, latest, wish.band(), wish.daysAt());
        Board alone = placeAlone.computeIfAbsent(room.placeId(), place -> alone(mat, place));
        List<Offer> offers = new FirstFit(alone, today).offers(within, 1);
        return offers.stream()
                .map(offer -> new Fit(
                        mat,
                        room.placeNumber(),
                        new Spot(room.placeId(), offer.slot(), offer.from(), offer.to()),
                        offer.celsius()))
                .findFirst();
    }

    /** A board with that place only, as it is taken and its mat is set. */
    private Board alone(MatSpace mat, UUID place) {
        MatSpace only = new MatSpace(mat.id(), mat.name(), mat.where(), mat.thermostat(), mat.usualC(), List.of(place));
        Board alone = new Board(board.from(), board.to(), List.of(only));
        board.from().datesUntil(board.to()).forEach(day -> {
            LocalDate next = day.plusDays(1);
            Slot.of(1).stream()
                    .filter(quarter -> !board.isFree(place, quarter, day, next))
                    .forEach(quarter -> alone.take(place, quarter, day, next));
            board.setPoint(mat.id(), day).ifPresent(celsius -> alone.setPoint(mat.id(), day, next, celsius));
        });
        return alone;
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? other : one;
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
