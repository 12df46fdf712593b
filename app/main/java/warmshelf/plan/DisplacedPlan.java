package warmshelf.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import warmshelf.allocation.SpaceCalendar;
import warmshelf.allocation.SpaceOffer;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.plan.engine.search.Planner;

/**
 * Proposes places for all that lies on a mat which cannot be used: the planner's, or first fit's where that places more or as many
 * with less shift. Each place is judged as it will be when it is saved.
 */
final class DisplacedPlan {
    private final DisplacedBoard room;
    private final Function<PlanQuestion, SeasonPlan> planner;

    DisplacedPlan(DisplacedBoard room, Function<PlanQuestion, SeasonPlan> planner) {
        this.room = room;
        this.planner = planner;
    }

    /**
     * The places found.
     *
     * @param places by stay, in an order in which they can be taken one after the other; what has none is left out
     * @param mostProven whether it is proven that no arrangement places more
     */
    record Proposed(Map<UUID, SpaceOffer> places, boolean mostProven) {}

    Proposed propose() {
        Map<UUID, SpaceOffer> best = DisplacedFit.places(room);
        int all = room.displaced().size();
        if (best.size() == all && shift(best) == 0) {
            return new Proposed(best, true);
        }
        DisplacedQuestion question = new DisplacedQuestion(room);
        int most = best.size() == all ? all : Planner.placedAtMost(question.easier());
        if (best.size() >= most && shift(best) == 0) {
            return new Proposed(best, true);
        }
        Map<UUID, SpaceOffer> planned = settled(question.offers(planner.apply(question.exact())));
        boolean better =
                planned.size() > best.size() || (planned.size() == best.size() && shift(planned) < shift(best));
        Map<UUID, SpaceOffer> places = better ? planned : best;
        return new Proposed(places, places.size() >= most);
    }

    private static long shift(Map<UUID, SpaceOffer> places) {
        return places.values().stream()
                .mapToLong(offer -> Math.abs(offer.shiftDays()))
                .sum();
    }

    /**
     * What becomes of a plan when the judge's rules are kept to the letter: each in turn goes to the best place that it has beside
     * all the others, at its own site if it can, and the mats stay as they are set.
     */
    private Map<UUID, SpaceOffer> settled(Map<UUID, SpaceOffer> planned) {
        Map<UUID, SpaceOffer> places = new HashMap<>(planned);
        for (Displaced each : plannedFirst(planned)) {
            laidAnew(each, places);
        }
        Map<UUID, SpaceOffer> taken = inTurn(places);
        for (Displaced each : room.displaced()) {
            if (!taken.containsKey(each.id())) {
                laidAnew(each, taken);
            }
        }
        return taken;
    }

    private List<Displaced> plannedFirst(Map<UUID, SpaceOffer> planned) {
        List<Displaced> order = new ArrayList<>(room.displaced());
        order.sort((one, other) -> Boolean.compare(planned.containsKey(other.id()), planned.containsKey(one.id())));
        return order;
    }

    private void laidAnew(Displaced each, Map<UUID, SpaceOffer> places) {
        places.remove(each.id());
        SpaceCalendar board = room.around(each, places);
        room.best(each, board).ifPresent(offer -> places.put(each.id(), offer));
    }

    /** In an order in which each can be taken after those before it; those that would have to change places at once are left out. */
    private Map<UUID, SpaceOffer> inTurn(Map<UUID, SpaceOffer> places) {
        Map<UUID, SpaceOffer> taken = new LinkedHashMap<>();
        int before = -1;
        while (taken.size() > before) {
            before = taken.size();
            for (Displaced each : room.displaced()) {
                SpaceOffer offer = places.get(each.id());
                if (offer != null && !taken.containsKey(each.id()) && room.fits(each, offer, taken)) {
                    taken.put(each.id(), offer);
                }
            }
        }
        return taken;
    }
}
