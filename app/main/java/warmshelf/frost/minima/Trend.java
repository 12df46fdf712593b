package warmshelf.frost.minima;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How a season's frost day moved over the record: the median of the slopes of all pairs of years (Theil and Sen), which a few
 * wild years cannot pull; whether it is more than chance by the Mann-Kendall test.
 *
 * @param daysPerDecade positive: the frost comes later
 * @param chance probability that a record without any trend looks as steady as this one (two-sided)
 */
public record Trend(int firstYear, int lastYear, double daysPerDecade, double chance) {
    private static final int LEAST_SEASONS = 10;
    private static final double CLEAR = 0.05;

    /** The trend of a side; empty with fewer than ten seasons with frost, from which none can be told. */
    public static Optional<Trend> of(FrostSide side) {
        List<SeasonFrost> frosts =
                side.seasons().stream().filter(SeasonFrost::any).toList();
        if (frosts.size() < LEAST_SEASONS) {
            return Optional.empty();
        }
        int first = frosts.get(0).year();
        int last = frosts.get(frosts.size() - 1).year();
        return Optional.of(new Trend(first, last, 10 * medianSlope(frosts), chance(frosts)));
    }

    /** Whether chance alone would make such a trend in fewer than one record in twenty. */
    public boolean isClear() {
        return chance < CLEAR;
    }

    /** The side's frost days as they would have been with all the record's change already behind them. */
    public FrostSide atItsEnd(FrostSide side) {
        List<SeasonFrost> moved = side.seasons().stream()
                .map(season -> season.moved(Math.round(daysPerDecade / 10 * (lastYear - season.year()))))
                .toList();
        return new FrostSide(side.spring(), moved, side.leftOut());
    }

    private static double medianSlope(List<SeasonFrost> frosts) {
        int n = frosts.size();
        double[] slopes = new double[n * (n - 1) / 2];
        int next = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                double years = frosts.get(j).year() - frosts.get(i).year();
                slopes[next++] = (frosts.get(j).number() - frosts.get(i).number()) / years;
            }
        }
        Arrays.sort(slopes);
        return (slopes[(slopes.length - 1) / 2] + slopes[slopes.length / 2]) / 2;
    }

    /** Mann-Kendall with the normal approximation, corrected for continuity and for ties. */
    private static double chance(List<SeasonFrost> frosts) {
        double[] days = frosts.stream().mapToDouble(SeasonFrost::number).toArray();
        int n = days.length;
        double score = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                score += Math.signum(days[j] - days[i]);
            }
        }
        double variance = (n * (n - 1.0) * (2 * n + 5) - ties(days)) / 18;
        if (score == 0 || variance <= 0) {
            return 1;
        }
        double z = (Math.abs(score) - 1) / Math.sqrt(variance);
        return 2 * NormalDistribution.of(0, 1).survivalProbability(z);
    }

    private static double ties(double[] days) {
        double[] sorted = days.clone();
        Arrays.sort(sorted);
        double ties = 0;
        int from = 0;
        for (int i = 1; i <= sorted.length; i++) {
            if (i == sorted.length || sorted[i] != sorted[from]) {
                double equal = i - from;
                ties += equal * (equal - 1) * (2 * equal + 5);
                from = i;
            }
        }
        return ties;
    }
}
