package warmshelf.finding.statistics;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The mean of some figures and what it says of the mean in the long run, by Student's t at 95 % (Student 1908, Biometrika 6, 1-25).
 *
 * @param count of the figures, at least 2
 * @param interval the 95 % interval of the mean
 */
public record MeanEstimate(int count, double mean, ConfidenceInterval interval) {
    private static final double TAIL = 0.025;

    /** Of at least two figures. */
    public static MeanEstimate of(double[] figures) {
        if (figures.length < 2) {
            throw new IllegalArgumentException("one figure has no spread");
        }
        double mean = Arrays.stream(figures).average().orElseThrow();
        double squares = Arrays.stream(figures)
                .map(figure -> (figure - mean) * (figure - mean))
                .sum();
        double error = Math.sqrt(squares / (figures.length - 1) / figures.length);
        double half = error * TDistribution.of(figures.length - 1.0).inverseSurvivalProbability(TAIL);
        return new MeanEstimate(figures.length, mean, new ConfidenceInterval(mean - half, mean + half));
    }

    /** Whether the mean lies farther from 0 than the spread of the figures explains. */
    public boolean differsFromZero() {
        return interval.low() > 0 || interval.high() < 0;
    }
}
