package warmshelf.plan.engine.search;

/**
 * One number for a plan while it is being searched for; which plan is kept is decided by the exact {@link Score}. Each rank of
 * choice weighs a few times the next one, since that is how many lesser requests commonly fit where a greater one lies.
 */
final class PlanWorth {
    private static final double STEP = 4;
    private static final int MOST_STEPS = 5;
    private static final double SHIFT = 0.004;
    private static final double WARM = 0.0005;

    private final double[] byRank;

    PlanWorth(int ranks) {
        byRank = new double[ranks];
        for (int rank = 0; rank < ranks; rank++) {
            byRank[rank] = Math.pow(STEP, Math.min(MOST_STEPS, ranks - 1 - rank));
        }
    }

    /** What a request adds when it is placed, as things stand. */
    double of(Layout layout, IndexedRequest ask) {
        return layout.isFirstOfPair(ask) ? byRank[ask.rank()] : 1;
    }

    double most(IndexedRequest ask) {
        return byRank[ask.rank()];
    }

    static double costs(Layout layout) {
        return SHIFT * layout.shiftDays() + WARM * layout.warmedDays();
    }
}
