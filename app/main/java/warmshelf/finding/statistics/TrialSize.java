package warmshelf.finding.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * What difference a number of seeds can show, before they are sown. A difference counts as shown when 95 % confidence holds it, and it is
 * to be shown in 8 trials of 10, as is usual.
 */
public final class TrialSize {
    private static final double CONFIDENT = NormalDistribution.of(0, 1).inverseSurvivalProbability(0.025);
    private static final double SHOWN = NormalDistribution.of(0, 1).inverseSurvivalProbability(0.2);
    private static final double BOTH = CONFIDENT + SHOWN;

    private TrialSize() {}

    /**
     * How many seeds must be seen to sprout, of both ways together, for a log-rank test to show a ratio of rates (Schoenfeld 1983,
     * Biometrics 39, 499-503): (z + z')² / (s (1 - s) ln² ratio).
     *
     * @param ratio of the hazards of sprouting, not 1
     * @param firstShare the share of the seeds that the first way gets
     */
    public static int sproutsForRatio(double ratio, double firstShare) {
        double log = Math.log(ratio);
        return (int) Math.ceil(BOTH * BOTH / (firstShare * (1 - firstShare) * log * log));
    }

    /**
     * The smallest ratio of days, above 1, that so many sprouted seeds of each way show: on the scale of logarithms days are about
     * normal, and the difference of two means has the variance 2 sd² / n.
     *
     * @param sproutedOfEach at least 1
     * @param logSpread the standard deviation of the logarithm of the days between seeds of one sowing
     */
    public static double ratioOfDaysShown(double sproutedOfEach, double logSpread) {
        return Math.exp(BOTH * logSpread * Math.sqrt(2 / sproutedOfEach));
    }

    /**
     * How many seeds of each way must be seen to sprout to show a ratio of days, by the same reckoning turned round: 2 (z + z')² sd² /
     * ln² ratio.
     *
     * @param ratio of days, not 1
     * @param logSpread the standard deviation of the logarithm of the days between seeds of one sowing
     */
    public static int sproutsForRatioOfDays(double ratio, double logSpread) {
        double effect = Math.log(ratio) / logSpread;
        return (int) Math.ceil(2 * BOTH * BOTH / (effect * effect));
    }

    /**
     * Seeds of each way for two shares to be told apart, by the difference of their arcsines (Cohen 1988, Statistical Power Analysis,
     * chapter 6).
     */
    public static int seedsForShares(double first, double second) {
        double effect = angle(first) - angle(second);
        return (int) Math.ceil(2 * BOTH * BOTH / (effect * effect));
    }

    /** The share below the expected one that so many seeds of each way would tell from it; 0 where none would. */
    public static double lowerShareShown(double expected, int seedsOfEach) {
        double angle = angle(expected) - BOTH * Math.sqrt(2.0 / seedsOfEach);
        double half = Math.sin(Math.max(0, angle) / 2);
        return half * half;
    }

    private static double angle(double share) {
        return 2 * Math.asin(Math.sqrt(share));
    }
}
