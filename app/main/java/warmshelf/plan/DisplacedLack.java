package warmshelf.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.stream.IntStream;
import warmshelf.allocation.Band;
import warmshelf.allocation.FirstFit;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.Obstacle;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.SpaceWish;
import warmshelf.shelf.Thermostat;

/** Finds out, by trying, what a displaced stay lacks beside all that has a place. */
final class DisplacedLack {
    private static final int FURTHEST_DAYS = 42;

    private final DisplacedBoard room;
    private final Map<UUID, SpaceOffer> places;
    private final LocalDate today;

    DisplacedLack(DisplacedBoard room, Map<UUID, SpaceOffer> places) {
        this.room = room;
        this.places = places;
        this.today = room.others().from();
    }

    NoOtherPlace of(Displaced one) {
        SpaceWish wish = one.wish();
        SpaceCalendar board = room.around(one, places);
        List<UUID> warm = board.mats().stream()
                .filter(mat -> degrees(mat.thermostat()).overlaps(wish.band()))
                .map(MatSpace::id)
                .toList();
        if (warm.isEmpty()) {
            return new NoOtherPlace.NoWarmMat(wish.band());
        }
        if (!one.closed().isEmpty()
                && warm.stream()
                        .allMatch(mat ->
                                board.isClosed(mat) || mat.equals(one.lying().matId()))) {
            return new NoOtherPlace.AllClosed();
        }
        if (first(board.bare(), wish).isEmpty()) {
            return new NoOtherPlace.AllOut();
        }
        return setOtherwise(board, wish).orElseGet(() -> {
            boolean begun = one.lying().isBegunBy(today);
            Optional<SpaceOffer> later = begun ? rest(board, wish) : afterLatest(board, wish);
            return new NoOtherPlace.NoRoom(
                    wish,
                    begun,
                    shortest(wish),
                    later.map(offer -> new NoOtherPlace.Later(
                                    offer.mat(), offer.placeNumber(), offer.from(), daysAfter(offer, wish)))
                            .orElse(null));
        });
    }

    private static Band degrees(Thermostat thermostat) {
        return new Band(thermostat.lowest(), thermostat.highest());
    }

    private Optional<SpaceOffer> first(SpaceCalendar board, SpaceWish wish) {
        return new FirstFit(board, today).offers(wish, 1).stream().findFirst();
    }

    /** A place that would do if the mats were not set for what lies there. */
    private Optional<NoOtherPlace> setOtherwise(SpaceCalendar board, SpaceWish wish) {
        return first(board.unset(), wish)
                .flatMap(offer -> offer.from()
                        .datesUntil(offer.to())
                        .flatMap(day -> tooWarmOrCold(board, offer, wish, day).stream())
                        .findFirst()
                        .map(obstacle -> new NoOtherPlace.SetOtherwise(offer.mat(), offer.placeNumber(), obstacle)));
    }

    private static Optional<Obstacle.SetForOthers> tooWarmOrCold(
            SpaceCalendar board, SpaceOffer offer, SpaceWish wish, LocalDate day) {
        OptionalDouble set = board.setPoint(offer.mat().id(), day);
        return set.isEmpty() || wish.band().contains(set.getAsDouble())
                ? Optional.empty()
                : Optional.of(new Obstacle.SetForOthers(offer.mat(), day, set.getAsDouble(), wish.band()));
    }

    private Optional<SpaceOffer> afterLatest(SpaceCalendar board, SpaceWish wish) {
        LocalDate from = wish.latest().plusDays(1);
        SpaceWish later = new SpaceWish(
                wish.sowingId(),
                wish.quarters(),
                from,
                from,
                from.plusDays(FURTHEST_DAYS),
                wish.band(),
                wish.needsLight(),
                wish.daysAt());
        return first(board, later);
    }

    /** What lies there already keeps its last day. */
    private Optional<SpaceOffer> rest(SpaceCalendar board, SpaceWish wish) {
        int all = shortest(wish);
        return IntStream.range(1, all)
                .mapToObj(gone -> {
                    LocalDate from = wish.ideal().plusDays(gone);
                    return first(
                            board,
                            new SpaceWish(
                                    wish.sowingId(),
                                    wish.quarters(),
                                    from,
                                    from,
                                    from,
                                    wish.band(),
                                    wish.needsLight(),
                                    celsius -> all - gone));
                })
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static int daysAfter(SpaceOffer offer, SpaceWish wish) {
        return (int) ChronoUnit.DAYS.between(wish.latest(), offer.from());
    }

    private static int shortest(SpaceWish wish) {
        return IntStream.rangeClosed(wish.band().lowC(), wish.band().highC())
                .map(celsius -> wish.daysAt().applyAsInt(celsius))
                .map(days -> Math.max(1, days))
                .min()
                .orElseThrow();
    }
}
