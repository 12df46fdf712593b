package warmshelf.allocation.plan.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.plan.PlacedStay;

/** Turns what the search works with into a plan for people, and back. */
final class Plans {
    private Plans() {}

    static List<PlacedStay> placed(Layout layout) {
        Ground ground = layout.ground;
        List<PlacedStay> stays = new ArrayList<>();
        for (Ask ask : ground.asks) {
            Spot spot = layout.spot(ask.index());
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

    private static PlacedStay.@Nullable LitStay light(Ground ground, Spot spot) {
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
    static boolean[] possible(Ground ground) {
        Layout empty = new Layout(ground);
        Finder finder = new Finder(empty, new Random(0));
        boolean[] possible = new boolean[ground.asks.size()];
        for (Ask ask : ground.asks) {
            possible[ask.index()] = finder.find(ask, Finder.Taste.NEAR) != null;
        }
        return possible;
    }
}
