package warmshelf.plan.engine.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.PlacedStay;

/** Turns what the search works with into a plan for people, and back. */
final class Plans {
    private Plans() {}

    static List<PlacedStay> placed(Layout layout) {
        IndexedQuestion ground = layout.ground;
        List<PlacedStay> stays = new ArrayList<>();
        for (IndexedRequest ask : ground.asks) {
            TrialPlacement spot = layout.spot(ask.index());
            if (spot != null) {
                stays.add(new PlacedStay(
                        ground.question.requests().get(ask.index()).id(),
                        ground.question.mats().get(spot.mat()).id(),
                        spot.place() + 1,
                        Layout.slot(spot.mask()),
                        ground.range(spot.from(), spot.to()),
                        light(ground, spot)));
            }
        }
        return stays;
    }

    private static PlacedStay.@Nullable LitStay light(IndexedQuestion ground, TrialPlacement spot) {
        if (spot.litSurface() < 0 || ground.question.litShelves() == null) {
            return null;
        }
        return new PlacedStay.LitStay(
                ground.question
                        .litShelves()
                        .get(spot.litSurface() - ground.mats)
                        .id(),
                spot.litPlace() + 1,
                Layout.slot(spot.litMask()),
                ground.range(spot.to(), spot.litTo()));
    }

    /** Which requests could lie somewhere if they were alone with the fixed stays. */
    static boolean[] possible(IndexedQuestion ground) {
        Layout empty = new Layout(ground);
        PlacementFinder finder = new PlacementFinder(empty, new Random(0));
        boolean[] possible = new boolean[ground.asks.size()];
        for (IndexedRequest ask : ground.asks) {
            possible[ask.index()] = finder.find(ask, PlacementFinder.Taste.NEAR) != null;
        }
        return possible;
    }
}
