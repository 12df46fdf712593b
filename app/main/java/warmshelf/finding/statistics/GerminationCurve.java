package warmshelf.finding.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The share of all seeds sown that has sprouted by each day: the nonparametric maximum likelihood estimate from times that are
 * known only to lie between two looks (Peto 1973; Turnbull 1976, J. R. Stat. Soc. B 38, 290-295). With exact times it is
 * the complement of Kaplan and Meier's.
 *
 * <p>The likelihood tells how much sprouted within each step, not when within it; in between the share is taken to rise evenly.
 *
 * @param steps in order of time, each with what sprouted in it; disjoint
 * @param never the share that had not sprouted by the last look
 */
public record GerminationCurve(List<Step> steps, double never) {
    /**
     * What sprouted after one day and by another.
     *
     * @param share of all seeds sown, 0 to 1
     */
    public record Step(double after, double by, double share) {}

    /** A point of the drawn curve. */
    public record Point(double day, double share) {}

    public GerminationCurve {
        steps = List.copyOf(steps);
    }

    /** The curve that makes what was seen most likely; at least one seed is needed. */
    public static GerminationCurve of(List<SproutingTime> times) {
        return IntervalLikelihood.of(times).maximize();
    }

    /** The share that had sprouted by a day. */
    public double shareBy(double day) {
        double sum = 0;
        for (Step step : steps) {
            if (day >= step.by()) {
                sum += step.share();
            } else if (day > step.after()) {
                sum += step.share() * (day - step.after()) / (step.by() - step.after());
            }
        }
        return sum;
    }

    /** The share that had sprouted by the last look. */
    public double last() {
        return 1 - never;
    }

    /** The day by which this share of all seeds sown had sprouted; empty where fewer did. */
    public OptionalDouble dayOf(double share) {
        double sum = 0;
        for (Step step : steps) {
            // the sum of many small shares misses a half by rounding alone
            if (sum + step.share() >= share - 1e-9) {
                double part = Math.min(1, Math.max(0, (share - sum) / step.share()));
                return OptionalDouble.of(step.after() + part * (step.by() - step.after()));
            }
            sum += step.share();
        }
        return OptionalDouble.empty();
    }

    /** The day by which half of all seeds sown had sprouted; empty where fewer did. */
    public OptionalDouble median() {
        return dayOf(0.5);
    }

    /** The day by which half of those that sprouted at all had; empty where none did. */
    public OptionalDouble halfOfThoseThatCame() {
        return steps.isEmpty() ? OptionalDouble.empty() : dayOf(last() / 2);
    }

    /** The corners of the drawn curve, from the day of sowing. */
    public List<Point> points() {
        List<Point> points = new ArrayList<>();
        points.add(new Point(0, 0));
        double sum = 0;
        for (Step step : steps) {
            addUnlessLast(points, new Point(step.after(), sum));
            sum += step.share();
            addUnlessLast(points, new Point(step.by(), sum));
        }
        return points;
    }

    private static void addUnlessLast(List<Point> points, Point point) {
        if (!points.get(points.size() - 1).equals(point)) {
            points.add(point);
        }
    }
}
