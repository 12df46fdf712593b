package warmshelf.exchange;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Method;
import warmshelf.sowing.Sowing;

/**
 * A sowing of a season that is over, as a row of a table tells of it.
 *
 * @param warm whether it stood on heat
 * @param cameUp seedlings, or roots in a bag, counted last; null: nobody counted
 * @param countedOn the day of that; null: nobody counted
 * @param lost seedlings; null: not known
 * @param plantedOutOn null: it was not, or nobody knows
 */
record PastSowing(
        int season,
        Sowing.Grower grower,
        String cropId,
        String variety,
        int seedYear,
        Method method,
        boolean warm,
        LocalDate sownOn,
        int seeds,
        @Nullable Integer cameUp,
        @Nullable LocalDate countedOn,
        @Nullable Integer lost,
        @Nullable LocalDate plantedOutOn,
        boolean givenUp,
        String note) {
    /** The last day before planting out of which the row tells. */
    LocalDate lastDay() {
        return countedOn == null ? sownOn : countedOn;
    }
}
