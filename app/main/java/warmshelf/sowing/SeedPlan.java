package warmshelf.sowing;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.seed.GerminationShare;
import warmshelf.seed.SeedCount;
import warmshelf.seed.SeedExpectation;
import warmshelf.seed.SeedNeed;
import warmshelf.seed.SeedQuestion;
import warmshelf.seed.ShareInterval;

/**
 * How many seeds go into how many cells for the plants wanted, or the sentence that says why not.
 *
 * @param seeds to sow
 * @param cells to fill; in the bag, the cells the sprouted seeds will want
 * @param probability chance of ending with at least the plants wanted
 * @param expected plants to expect
 * @param testFirst whether the seed's age leaves so much open that ten should be tested first; this is what to sow meanwhile
 * @param problem why this cannot be sown as asked; null when it can
 */
record SeedPlan(
        int seeds,
        int cells,
        double probability,
        double expected,
        boolean testFirst,
        @Nullable Problem problem) {
    /** What stands in the way. */
    enum Cause {
        /** The seed: too little of it, or too weak. */
        SEED,
        /** The tray: too few cells. */
        TRAY
    }

    /** @param sentence for whoever asked */
    record Problem(Cause cause, String sentence) {}

    /** Nine times in ten the plants wanted are there in the end. */
    static final double CONFIDENCE = 0.9;

    private static final double LITTLE_KNOWN = 0.5;

    /**
     * Plans the seeds.
     *
     * @param survival share of the seedlings that live until planting out
     * @param seedsLeft in the packet; null: nobody has counted
     * @param capacity cells that the chosen tray has
     * @param acceptFewer sow what is left even if it is too few
     */
    static SeedPlan of(
            int plants,
            SeedExpectation expectation,
            int perCell,
            double survival,
            @Nullable Integer seedsLeft,
            int capacity,
            boolean acceptFewer) {
        String has = seedsLeft != null && seedsLeft == 0
                ? "This lot is used up"
                : "This lot has %d seeds".formatted(seedsLeft == null ? 0 : seedsLeft);
        return of(plants, expectation, perCell, survival, seedsLeft, has, capacity, acceptFewer);
    }

    /**
     * The same of a lot that others use too.
     *
     * @param free seeds that may be planned on; null: nobody has counted
     * @param has how many those are and why, as the beginning of a sentence
     */
    static SeedPlan of(
            int plants,
            SeedExpectation expectation,
            int perCell,
            double survival,
            @Nullable Integer free,
            String has,
            int capacity,
            boolean acceptFewer) {
        GerminationShare share = expectation.share();
        int room = free == null ? capacity : Math.min(capacity, free / perCell);
        Optional<SeedNeed> need =
                SeedNeed.of(new SeedQuestion(plants, CONFIDENCE, share, survival, perCell), expectation, room);
        if (need.isEmpty()) {
            return new SeedPlan(
                    1,
                    1,
                    0,
                    0,
                    false,
                    new Problem(
                            Cause.SEED,
                            "So little of this seed comes up that no number of seeds would do; choose another lot."));
        }
        SeedCount needed = need.get().sow();
        if (free != null && free < needed.seeds()) {
            return tooFew(plants, share, perCell, survival, free, has, capacity, acceptFewer, need.get());
        }
        return fitted(
                share,
                needed.seeds(),
                needed.cells(),
                needed.probability(),
                expected(needed.cells(), share, perCell, survival),
                need.get().testFirst(),
                capacity);
    }

    private static SeedPlan tooFew(
            int plants,
            GerminationShare share,
            int perCell,
            double survival,
            int seedsLeft,
            String has,
            int capacity,
            boolean acceptFewer,
            SeedNeed need) {
        double expected = expected(Math.max(1, seedsLeft / perCell), share, perCell, survival);
        if (seedsLeft == 0) {
            return new SeedPlan(1, 1, 0, 0, false, new Problem(Cause.SEED, has + "; choose another."));
        }
        if (!acceptFewer && need.testFirst()) {
            return new SeedPlan(
                    seedsLeft, 1, 0, expected, true, new Problem(Cause.SEED, testFirst(has, expected, plants)));
        }
        if (!acceptFewer) {
            return new SeedPlan(
                    seedsLeft,
                    1,
                    0,
                    expected,
                    false,
                    new Problem(
                            Cause.SEED,
                            ("%s, and %d are needed for %d plants nine times in ten. %sThat is too few: expect about"
                                            + " %d of the %d plants. Ask for fewer plants, choose another lot, or tick 'sow what"
                                            + " is left'.")
                                    .formatted(
                                            has,
                                            need.sow().seeds(),
                                            plants,
                                            advice(share),
                                            Math.round(expected),
                                            plants)));
        }
        int cells = (seedsLeft + perCell - 1) / perCell;
        return fitted(share, seedsLeft, cells, 0, expected, need.testFirst(), capacity);
    }

    private static String testFirst(String has, double expected, int plants) {
        return ("%s. Its age leaves so much open that nobody can say how many %d plants need: test ten first, on damp paper."
                        + " Sown untested, expect about %d of the %d plants. Ask for fewer plants, choose another lot, or tick"
                        + " 'sow what is left'.")
                .formatted(has, plants, Math.round(expected), plants);
    }

    /** Where next to nothing is known of the seed, doubt asks for more of it than a test would. */
    private static String advice(GerminationShare share) {
        ShareInterval range = share.interval(CONFIDENCE);
        return range.high() - range.low() > LITTLE_KNOWN
                ? "Little is known of this seed: test ten first, and fewer may do. "
                : "";
    }

    private static SeedPlan fitted(
            GerminationShare share,
            int seeds,
            int cells,
            double probability,
            double expected,
            boolean testFirst,
            int capacity) {
        Problem problem = cells <= capacity
                ? null
                : new Problem(
                        Cause.TRAY,
                        "%d cells are needed, and this tray has %d; choose a larger tray, smaller cells or fewer plants.%s"
                                .formatted(
                                        cells,
                                        capacity,
                                        advice(share).isEmpty()
                                                ? ""
                                                : " " + advice(share).strip()));
        return new SeedPlan(seeds, cells, probability, expected, testFirst, problem);
    }

    private static double expected(int cells, GerminationShare share, int perCell, double survival) {
        return cells * share.atLeastOneOf(perCell) * survival;
    }
}
