package warmshelf.allocation.plan.search;

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
        Finder finder = new Finder(layout, new Random(0));
        for (Ask ask : layout.ground.asks) {
            place(layout, finder, ask, new Finder.Taste(1, 0, 0, 0, 0.0001, 0));
        }
    }

    /**
     * Greedy: all first choices before all second choices; among them what takes the least room first, then what must begin
     * first. Each goes where it is near to its ideal start and leaves the fewest gaps.
     */
    static void greedy(Layout layout) {
        Finder finder = new Finder(layout, new Random(0));
        List<Ask> order = new ArrayList<>(layout.ground.asks);
        order.sort(Comparator.comparingInt(Ask::rank)
                .thenComparingInt(Ask::size)
                .thenComparingInt(Ask::latest)
                .thenComparingInt(Ask::index));
        for (Ask ask : order) {
            place(layout, finder, ask, Finder.Taste.NEAR);
        }
    }

    private static void place(Layout layout, Finder finder, Ask ask, Finder.Taste taste) {
        Spot spot = finder.find(ask, taste);
        if (spot != null) {
            layout.put(ask, spot);
        }
    }
}
