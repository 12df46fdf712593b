package warmshelf.allocation.plan.search;

import java.util.Random;
import java.util.function.BooleanSupplier;

/** Moves stays one by one nearer to their ideal start, onto mats that are warm anyhow, as long as the exact score gains. */
final class Polish {
    private static final int MOST_ROUNDS = 6;

    private Polish() {}

    static void of(Layout layout, BooleanSupplier enough) {
        Finder finder = new Finder(layout, new Random(0));
        Score score = layout.score();
        boolean gained = true;
        for (int round = 0; gained && round < MOST_ROUNDS; round++) {
            gained = false;
            for (Ask ask : layout.ground.asks) {
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
    private static Score move(Layout layout, Finder finder, Ask ask, Score before) {
        Spot from = layout.lift(ask);
        Spot to = finder.find(ask, Finder.Taste.NEAR);
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
