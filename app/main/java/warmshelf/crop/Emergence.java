package warmshelf.crop;

import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * When seed is expected to come up at one temperature.
 *
 * @param days median days from sowing to emergence
 * @param days5 days by which the first twentieth is expected
 * @param days95 days by which all but the last twentieth is expected
 * @param normalShare share 0..1 of good seed that makes a normal seedling at this temperature, where it was tested
 */
public record Emergence(double days, double days5, double days95, OptionalDouble normalShare) {
    /**
     * The part of the time to emergence after which a root shows on damp paper. An assumption, since the tables count
     * seedlings above half an inch of soil: the root shows after about seven tenths of that time, and the shoot needs the rest
     * to reach the light. Common practice moves seed as its root just shows.
     */
    public static final double ROOT_SHOWS_AT = 0.7;

    /** Standard deviations from the median to the 5 and 95 % points of a normal distribution. */
    private static final double SIGMAS = 1.6448536269514722;

    /**
     * The standard deviation of the logarithm of the days between seeds of one sowing: that of two halves of normal distributions, one
     * on each side of the median.
     */
    public double logSpread() {
        double before = Math.log(days / days5) / SIGMAS;
        double after = Math.log(days95 / days) / SIGMAS;
        double mean = (after - before) / Math.sqrt(2 * Math.PI);
        return Math.sqrt((before * before + after * after) / 2 - mean * mean);
    }

    /** The share 0..1 of the seed that comes up at all which has done so after some days: log-normal on each side of the median. */
    public double shownAfter(double daysSinceSowing) {
        if (daysSinceSowing <= 0) {
            return 0;
        }
        double edge = daysSinceSowing < days ? days / days5 : days95 / days;
        double sigma = Math.log(edge) / SIGMAS;
        return NormalDistribution.of(0, 1).cumulativeProbability(Math.log(daysSinceSowing / days) / sigma);
    }
}
