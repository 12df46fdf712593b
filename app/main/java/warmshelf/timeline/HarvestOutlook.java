package warmshelf.timeline;

import static warmshelf.timeline.TimelineSentences.SAY;

import java.time.LocalDate;
import java.util.OptionalDouble;
import warmshelf.crop.Crop.Basis;
import warmshelf.crop.Crop.DaysToMaturity;
import warmshelf.words.DayWords;

/**
 * How much of a harvest comes before the frost that kills the crop, or the cold that ends its growth. The harvest is taken to begin after the fewest of the
 * crop's, or the variety's, days to maturity and to end after the most, evenly: half of it is in by their middle.
 *
 * @param first day of the first harvest
 * @param half day by which half of it is in
 * @param chanceFirst the chance, 0..1, that the first harvest comes before that frost; empty where only a date is known of it
 * @param chanceHalf the chance that half of it does
 * @param ending what ends the harvest
 */
public record HarvestOutlook(
        LocalDate first,
        LocalDate half,
        OptionalDouble chanceFirst,
        OptionalDouble chanceHalf,
        Reach reach,
        Ending ending) {

    /** What ends it. */
    public enum Ending {
        FROST_KILLS(SAY.killingFrost()),
        /** The crop stands on in the cold, and nothing more ripens. */
        GROWTH_ENDS(SAY.coldThatEndsGrowth());

        private final String words;

        Ending(String words) {
            this.words = words;
        }
    }

    /** How far a harvest gets before the frost. */
    public enum Reach {
        /** The first of it in nine autumns of ten, and half of it in seven. */
        SURE,
        /** Something in more autumns than not, but not as sure as that. */
        TIGHT,
        /** Nothing at all in more autumns than not. */
        NONE
    }

    // The levels at which frost dates are published and gardens planned: one year in ten, three in ten, half of them.
    private static final double FIRST_SURELY = 0.9;
    private static final double HALF_MOSTLY = 0.7;
    private static final double WORTH_SOWING = 0.5;

    private static final double NEARLY_ALWAYS = 0.95;
    private static final double ROUNDING = 1e-9;

    /** @param slowerDays so many days more than in spring and summer */
    static HarvestOutlook of(
            DaysToMaturity days, int slowerDays, KillingFrost frost, LocalDate sown, LocalDate plantedOut) {
        LocalDate first = harvest(days.basis(), days.min() + slowerDays, sown, plantedOut);
        LocalDate half = harvest(days.basis(), (days.min() + days.max()) / 2 + slowerDays, sown, plantedOut);
        return new HarvestOutlook(
                first,
                half,
                frost.chanceLaterThan(first),
                frost.chanceLaterThan(half),
                reach(frost, first, half),
                frost.kills() ? Ending.FROST_KILLS : Ending.GROWTH_ENDS);
    }

    private static LocalDate harvest(Basis basis, int days, LocalDate sown, LocalDate plantedOut) {
        return basis == Basis.TRANSPLANTING
                ? plantedOut.plusDays(days)
                : DateWindow.later(sown.plusDays(days), plantedOut);
    }

    private static Reach reach(KillingFrost frost, LocalDate first, LocalDate half) {
        if (!frost.isLaterThan(first, WORTH_SOWING)) {
            return Reach.NONE;
        }
        return frost.isLaterThan(first, FIRST_SURELY) && frost.isLaterThan(half, HALF_MOSTLY)
                ? Reach.SURE
                : Reach.TIGHT;
    }

    /** In a sentence with its figures. */
    public String sentence() {
        if (chanceFirst.isEmpty() || chanceHalf.isEmpty()) {
            return SAY.harvestExpected(DayWords.dayOfMonth(first), DayWords.dayOfMonth(half));
        }
        double ofHalf = chanceHalf.getAsDouble();
        double ofFirst = chanceFirst.getAsDouble();
        if (ofHalf >= NEARLY_ALWAYS) {
            return SAY.halfBefore(DayWords.dayOfMonth(half), ending.words);
        }
        if (first.equals(half)) {
            return SAY.harvestBefore(DayWords.dayOfMonth(first), ending.words, years(ofFirst));
        }
        return SAY.firstAndHalfBefore(
                DayWords.dayOfMonth(first), ending.words, years(ofFirst), DayWords.dayOfMonth(half), years(ofHalf));
    }

    /** The first of it alone, such as '8 October, in time in 2 of 10 years'. */
    String firstInWords() {
        String day = DayWords.dayOfMonth(first);
        return chanceFirst.isPresent() ? SAY.inTimeIn(day, years(chanceFirst.getAsDouble())) : day;
    }

    /** For example 'in 9 of 10 years': never more of them than there are, so that the words agree with the levels above. */
    private static String years(double chance) {
        if (chance >= NEARLY_ALWAYS) {
            return SAY.inNearlyEveryYear();
        }
        int years = (int) Math.floor(chance * 10 + ROUNDING);
        return years == 0 ? SAY.inHardlyAnyYear() : SAY.inYearsOfTen(years);
    }
}
