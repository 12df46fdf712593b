package warmshelf.seed;

/**
 * How many plants so many cells give.
 *
 * @param share share of the seeds that come up
 * @param survival share of the seedlings that live until planting out, more than 0 and at most 1
 * @param perCell seeds sown to a cell; one plant is kept in each
 * @param cells at least 1
 */
public record PlantOutlook(GerminationShare share, double survival, int perCell, int cells) {
    public PlantOutlook {
        if (cells < 1) {
            throw new IllegalArgumentException("cells must be at least 1, was " + cells);
        }
    }

    /** The plants to expect, on average. */
    public double expected() {
        return cells * share.atLeastOneOf(perCell) * survival;
    }

    /** The chance of at least so many plants. */
    public double atLeast(int plants) {
        if (plants <= 0) {
            return 1;
        }
        return plants > cells
                ? 0
                : SeedCount.inCells(new SeedQuestion(plants, 0.5, share, survival, perCell), cells)
                        .probability();
    }

    /** The most plants of which the chance of at least so many is no less than that one; more than 0, less than 1. */
    public int reachedWith(double chance) {
        int least = 0;
        int most = cells;
        while (least < most) {
            int middle = least + (most - least + 1) / 2;
            if (atLeast(middle) >= chance) {
                least = middle;
            } else {
                most = middle - 1;
            }
        }
        return least;
    }
}
