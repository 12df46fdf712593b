package warmshelf.plan.engine.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/** The two plain ways of planning, by the same rules as the search. */
final class Baselines {
    private Baselines() {}

    /**
     * First come, first served: in the order of the file each request gets the free spot nearest to its ideal start, the
     * earlier of two, on the first mat in the first place.
     */
    static void firstCome(Layout layout) {
        PlacementFinder finder = new PlacementFinder(layout, new Random(0));
        for (IndexedRequest ask : layout.ground.asks) {
            place(layout, finder, ask, new PlacementFinder.Taste(1, 0, 0, 0, 0.0001, 0));
        }
    }

    /**
     * Greedy: all first choices before all second choices; among them what takes the least room first, then what must begin
     * first. Each goes where it is near to its ideal start and leaves the fewest gaps.
     */
    static void greedy(Layout layout) {
        PlacementFinder finder = new PlacementFinder(layout, new Random(0));
        List<IndexedRequest> order = new ArrayList<>(layout.ground.asks);
        order.sort(Comparator.comparingInt(IndexedRequest::rank)
                .thenComparingInt(IndexedRequest::size)
                .thenComparingInt(IndexedRequest::latest)
                .thenComparingInt(IndexedRequest::index));
        for (IndexedRequest ask : order) {
            place(layout, finder, ask, PlacementFinder.Taste.NEAR);
        }
    }

    private static void place(Layout layout, PlacementFinder finder, IndexedRequest ask, PlacementFinder.Taste taste) {
        TrialPlacement spot = finder.find(ask, taste);
        if (spot != null) {
            layout.put(ask, spot);
        }
    }
}
