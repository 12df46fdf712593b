package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.seed.GerminationShare;
import warmshelf.seed.PlantOutlook;
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
        @Nullable SeedTrouble problem) {
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
        String has =
                seedsLeft != null && seedsLeft == 0 ? SAY.lotUsedUp() : SAY.lotHas(seedsLeft == null ? 0 : seedsLeft);
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
            return new SeedPlan(1, 1, 0, 0, false, new SeedTrouble.NextToNothingComesUp());
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
            return new SeedPlan(1, 1, 0, 0, false, new SeedTrouble.NoneLeft(has));
        }
        if (!acceptFewer && need.testFirst()) {
            return new SeedPlan(
                    seedsLeft, 1, 0, expected, true, new SeedTrouble.TestFirst(has, plants, Math.round(expected)));
        }
        if (!acceptFewer) {
            return new SeedPlan(
                    seedsLeft,
                    1,
                    0,
                    expected,
                    false,
                    new SeedTrouble.TooFew(
                            has, need.sow().seeds(), plants, Math.round(expected), isLittleKnown(share)));
        }
        int cells = (seedsLeft + perCell - 1) / perCell;
        return fitted(share, seedsLeft, cells, 0, expected, need.testFirst(), capacity);
    }

    /** Where next to nothing is known of the seed, doubt asks for more of it than a test would. */
    private static boolean isLittleKnown(GerminationShare share) {
        ShareInterval range = share.interval(CONFIDENCE);
        return range.high() - range.low() > LITTLE_KNOWN;
    }

    private static SeedPlan fitted(
            GerminationShare share,
            int seeds,
            int cells,
            double probability,
            double expected,
            boolean testFirst,
            int capacity) {
        SeedTrouble problem =
                cells <= capacity ? null : new SeedTrouble.TooFewCells(cells, capacity, isLittleKnown(share));
        return new SeedPlan(seeds, cells, probability, expected, testFirst, problem);
    }

    private static double expected(int cells, GerminationShare share, int perCell, double survival) {
        return new PlantOutlook(share, survival, perCell, cells).expected();
    }
}
