package warmshelf.seed;

import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * How many seeds to sow.
 *
 * @param seeds seeds to sow, all cells together
 * @param cells cells to fill
 * @param probability chance of ending with at least the plants wanted
 * @param atLeastOne chance that a cell is not empty
 */
public record SeedCount(int seeds, int cells, double probability, double atLeastOne) {
    /** Beyond this the answer is another lot, not more seed. */
    public static final int MOST_CELLS = 1_000_000;

    /**
     * The fewest cells, and so seeds, that give the plants wanted with the confidence wanted. Seeds come up independently of
     * each other; each cell keeps one plant. Empty where more than {@value #MOST_CELLS} cells would be needed.
     */
    public static Optional<SeedCount> of(SeedQuestion question) {
        IntToDoubleFunction chance = cells -> CellChances.enoughPlants(question, cells);
        int enough = question.plantsWanted();
        while (chance.applyAsDouble(enough) < question.confidence()) {
            if (enough == MOST_CELLS) {
                return Optional.empty();
            }
            enough = (int) Math.min(MOST_CELLS, 2L * enough);
        }
        return Optional.of(inCells(question, fewest(question, chance, enough)));
    }

    /** What so many cells give, whether or not that is the confidence wanted. */
    static SeedCount inCells(SeedQuestion question, int cells) {
        return new SeedCount(
                cells * question.perCell(),
                cells,
                CellChances.enoughPlants(question, cells),
                question.share().atLeastOneOf(question.perCell()));
    }

    /** More cells never lower the chance, so halving the range finds the fewest. */
    private static int fewest(SeedQuestion question, IntToDoubleFunction chance, int enough) {
        int least = question.plantsWanted();
        int most = enough;
        while (least < most) {
            int middle = least + (most - least) / 2;
            if (chance.applyAsDouble(middle) >= question.confidence()) {
                most = middle;
            } else {
                least = middle + 1;
            }
        }
        return most;
    }
}
