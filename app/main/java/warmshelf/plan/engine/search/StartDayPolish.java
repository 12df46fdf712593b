package warmshelf.plan.engine.search;

import java.util.Random;
import java.util.function.BooleanSupplier;

/** Moves stays one by one nearer to their ideal start, onto mats that are warm anyhow, as long as the exact score gains. */
final class StartDayPolish {
    private static final int MOST_ROUNDS = 6;

    private StartDayPolish() {}

    static void of(Layout layout, BooleanSupplier enough) {
        PlacementFinder finder = new PlacementFinder(layout, new Random(0));
        Score score = layout.score();
        boolean gained = true;
        for (int round = 0; gained && round < MOST_ROUNDS; round++) {
            gained = false;
            for (IndexedRequest ask : layout.ground.asks) {
                if (enough.getAsBoolean()) {
                    return;
                }
                if (layout.spot(ask.index()) != null) {
                    Score moved = move(layout, finder, ask, score);
                    gained |= moved.compareTo(score) > 0;
                    score = moved;
                }
            }
        }
    }

    /** The score after moving a request to its best spot; unchanged when that is no gain. */
    private static Score move(Layout layout, PlacementFinder finder, IndexedRequest ask, Score before) {
        TrialPlacement from = layout.lift(ask);
        TrialPlacement to = finder.find(ask, PlacementFinder.Taste.NEAR);
        layout.put(ask, to == null ? from : to);
        Score after = layout.score();
        if (after.compareTo(before) > 0) {
            return after;
        }
        layout.lift(ask);
        layout.put(ask, from);
        return before;
    }
}
