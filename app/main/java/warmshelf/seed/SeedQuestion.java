package warmshelf.seed;

/**
 * How many seeds are needed?
 *
 * @param plantsWanted plants in the end, 1 to 5,000
 * @param confidence wanted chance of ending with at least that many, more than 0 and less than 1
 * @param share share of the seeds that come up
 * @param survival share of the seedlings that live until planting out, more than 0 and at most 1
 * @param perCell seeds sown to a cell, 1 to 10; one plant is kept in each cell
 */
public record SeedQuestion(int plantsWanted, double confidence, GerminationShare share, double survival, int perCell) {
    public static final int MOST_PLANTS = 5_000;
    public static final int MOST_PER_CELL = 10;

    public SeedQuestion {
        require(plantsWanted >= 1 && plantsWanted <= MOST_PLANTS, "plants wanted", plantsWanted);
        require(confidence > 0 && confidence < 1, "confidence", confidence);
        require(survival > 0 && survival <= 1, "survival", survival);
        require(perCell >= 1 && perCell <= MOST_PER_CELL, "seeds per cell", perCell);
    }

    /** The same question of other seed. */
    SeedQuestion with(GerminationShare other) {
        return new SeedQuestion(plantsWanted, confidence, other, survival, perCell);
    }

    private static void require(boolean accepted, String name, Number was) {
        if (!accepted) {
            throw new IllegalArgumentException(name + " cannot be " + was);
        }
    }
}
