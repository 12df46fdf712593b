package warmshelf.frost.files;

import java.util.Map;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.station.Side;

/**
 * A normal distribution laid by least squares through dates published at several chances: the day is the mean plus the
 * standard deviation times the normal quantile.
 *
 * @param medianDay the 50 % day itself where it is given, else the fitted one
 * @param sdDays null with fewer than two levels; negative or zero where the dates run the wrong way round
 */
record LevelFit(double medianDay, @Nullable Double sdDays) {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final int MIDDLE = 50;

    /**
     * Fits the days by per cent.
     *
     * @param side spring: the chance of a frost on or after the day; autumn: on or before it
     * @return null where a single level other than the middle tells neither
     */
    static @Nullable LevelFit of(Side side, Map<Integer, Integer> dayByPercent) {
        Integer middle = dayByPercent.get(MIDDLE);
        if (dayByPercent.size() < 2) {
            return middle == null ? null : new LevelFit(middle, null);
        }
        double meanQuantile = 0;
        double meanDay = 0;
        for (Map.Entry<Integer, Integer> level : dayByPercent.entrySet()) {
            meanQuantile += quantile(side, level.getKey()) / dayByPercent.size();
            meanDay += (double) level.getValue() / dayByPercent.size();
        }
        double together = 0;
        double squares = 0;
        for (Map.Entry<Integer, Integer> level : dayByPercent.entrySet()) {
            double stray = quantile(side, level.getKey()) - meanQuantile;
            together += stray * (level.getValue() - meanDay);
            squares += stray * stray;
        }
        double slope = together / squares;
        return new LevelFit(middle == null ? meanDay - slope * meanQuantile : middle, slope);
    }

    private static double quantile(Side side, int percent) {
        double share = percent / 100.0;
        return NORMAL.inverseCumulativeProbability(side == Side.SPRING ? 1 - share : share);
    }
}
