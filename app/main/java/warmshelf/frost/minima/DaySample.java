package warmshelf.frost.minima;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** The days on which frost came in the seasons that had one: quantiles as counted and by a normal fit. */
final class DaySample {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final double CONFIDENCE = 0.9;

    private final double[] sorted;
    private final double mean;
    private final double sd;

    DaySample(double... days) {
        if (days.length == 0) {
            throw new IllegalArgumentException("a sample of no days tells nothing");
        }
        sorted = days.clone();
        Arrays.sort(sorted);
        mean = Arrays.stream(days).average().orElseThrow();
        double squares =
                Arrays.stream(days).map(day -> (day - mean) * (day - mean)).sum();
        sd = days.length < 2 ? Double.NaN : Math.sqrt(squares / (days.length - 1));
    }

    int size() {
        return sorted.length;
    }

    double earliest() {
        return sorted[0];
    }

    double latest() {
        return sorted[sorted.length - 1];
    }

    /** Standard deviation from year to year; not a number where there are fewer than two seasons. */
    double sd() {
        return sd;
    }

    /**
     * The day reached by a share of the seasons as they were counted: the median-unbiased estimate, type 8 of Hyndman and Fan
     * (1996), which is good whatever the distribution; never beyond the days on record.
     */
    double counted(double share) {
        double place = (sorted.length + 1 / 3.0) * share + 1 / 3.0 - 1;
        int below = (int) Math.floor(Math.min(Math.max(place, 0), sorted.length - 1));
        int above = Math.min(below + 1, sorted.length - 1);
        double part = Math.min(Math.max(place - below, 0), 1);
        return sorted[below] + part * (sorted[above] - sorted[below]);
    }

    /** The same day by a normal distribution with the sample's mean and standard deviation. */
    double fitted(double share) {
        return mean + NORMAL.inverseCumulativeProbability(share) * (Double.isNaN(sd) ? 0 : sd);
    }

    /**
     * Half the width of the 90 % interval around a quantile: Student's t times the standard error of mean plus z standard
     * deviations, s x sqrt(1/n + z^2 / (2(n - 1))), the usual large-sample formula. Not a number below two seasons.
     */
    double halfWidth(double share) {
        if (sorted.length < 2) {
            return Double.NaN;
        }
        double z = NORMAL.inverseCumulativeProbability(share);
        double error = sd * Math.sqrt(1.0 / sorted.length + z * z / (2.0 * (sorted.length - 1)));
        return TDistribution.of(sorted.length - 1).inverseCumulativeProbability((1 + CONFIDENCE) / 2) * error;
    }
}
