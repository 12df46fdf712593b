package warmshelf.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import warmshelf.allocation.CandidatePlace;
import warmshelf.allocation.FirstFit;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceJudge;
import warmshelf.allocation.SpaceOffer;
import warmshelf.allocation.Surroundings;
import warmshelf.placing.LyingStay;

/**
 * The stays of a mat that cannot be used, and around them everything else that lies anywhere. Each of them lies where it lies now
 * until it has another place.
 */
final class DisplacedBoard {
    private static final Comparator<SpaceOffer> LEAST_SHIFT =
            Comparator.comparingInt((SpaceOffer offer) -> Math.abs(offer.shiftDays()));

    private final SpaceCalendar others;
    private final List<Displaced> displaced;

    /** @param others the board on which none of the displaced stays lies; its first day is today */
    DisplacedBoard(SpaceCalendar others, List<Displaced> displaced) {
        this.others = others;
        this.displaced = List.copyOf(displaced);
    }

    SpaceCalendar others() {
        return others;
    }

    List<Displaced> displaced() {
        return displaced;
    }

    /** What a stay would be laid down on while some of the displaced ones lie elsewhere and the rest where they lie now. */
    SpaceCalendar around(Displaced one, Map<UUID, SpaceOffer> elsewhere) {
        SpaceCalendar board = others.copy();
        one.closed().forEach(board::close);
        for (Displaced each : displaced) {
            SpaceOffer offer = elsewhere.get(each.id());
            if (each.equals(one)) {
                continue;
            }
            if (offer == null) {
                layWhereItLies(board, each.lying());
            } else {
                board.accept(offer);
            }
        }
        return board;
    }

    private static void layWhereItLies(SpaceCalendar board, LyingStay lying) {
        UUID mat = Objects.requireNonNull(lying.matId());
        board.take(
                lying.stay().placeId(),
                lying.stay().slot(),
                lying.stay().from(),
                lying.stay().to());
        Objects.requireNonNull(lying.warm())
                .runs()
                .forEach(run -> board.setPoint(mat, run.from(), run.to(), run.celsius()));
    }

    /** The free place that is nearest to its day, at its own site if there is one. */
    Optional<SpaceOffer> best(Displaced one, SpaceCalendar board) {
        List<SpaceOffer> offers = new ArrayList<>(new FirstFit(board, board.from())
                .offers(one.wish(), board.mats().size()));
        offers.sort(LEAST_SHIFT.thenComparing(
                offer -> !one.near().contains(offer.mat().id())));
        return offers.stream().findFirst();
    }

    /** Whether the judge lets an offer be taken while some of the displaced stays lie elsewhere already. */
    boolean fits(Displaced one, SpaceOffer offer, Map<UUID, SpaceOffer> elsewhere) {
        SpaceCalendar board = around(one, elsewhere);
        CandidatePlace place = new CandidatePlace(
                offer.placeId(), offer.placeNumber(), offer.mat().where(), offer.mat());
        return !board.isClosed(offer.mat().id())
                && board.isFree(offer.placeId(), offer.slot(), offer.from(), offer.to())
                && new SpaceJudge(new Surroundings(board, List.of()))
                        .onMat(
                                place,
                                offer.mat(),
                                offer.spot(),
                                offer.warm(),
                                one.wish().band(),
                                one.wish().needsLight())
                        .isEmpty();
    }
}
