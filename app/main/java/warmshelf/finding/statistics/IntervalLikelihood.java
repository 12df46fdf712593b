package warmshelf.finding.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The likelihood of times known between two looks, and its maximum over all distributions.
 *
 * <p>Only the innermost intervals can hold any share: those that begin at a last look without and end at a first look with, with
 * no other beginning or end between (Turnbull 1976). Over these the likelihood is concave. It is maximized by alternating the
 * self-consistent step (expectation and maximization), which always climbs, with the iterative convex minorant, which moves
 * quickly (Wellner and Zhan 1997, J. Am. Stat. Assoc. 92, 945-959). What is found is the maximum, because the conditions of Kuhn
 * and Tucker end the search (Gentleman and Geyer 1994, Biometrika 81, 618-623).
 */
final class IntervalLikelihood {
    private static final double TOLERANCE = 1e-9;
    private static final int MOST_ROUNDS = 20_000;
    private static final double SMALLEST = 1e-300;

    private final List<GerminationCurve.Step> innermost;
    private final int[] first;
    private final int[] last;
    private final int[] seeds;
    private final int total;

    private IntervalLikelihood(List<GerminationCurve.Step> innermost, int[] first, int[] last, int[] seeds, int total) {
        this.innermost = innermost;
        this.first = first;
        this.last = last;
        this.seeds = seeds;
        this.total = total;
    }

    static IntervalLikelihood of(List<SproutingTime> times) {
        if (times.isEmpty()) {
            throw new IllegalArgumentException("a curve needs at least one seed");
        }
        Map<SproutingTime, Integer> counts = new LinkedHashMap<>();
        times.forEach(time -> counts.merge(time, 1, Integer::sum));
        List<SproutingTime> distinct = List.copyOf(counts.keySet());
        List<Edge> edges = edges(distinct);
        List<GerminationCurve.Step> innermost = new ArrayList<>();
        int[] first = new int[distinct.size()];
        int[] last = new int[distinct.size()];
        for (int i = 0; i < edges.size(); i++) {
            Edge edge = edges.get(i);
            if (edge.opens()) {
                first[edge.of()] = innermost.size();
                if (i + 1 < edges.size() && !edges.get(i + 1).opens()) {
                    innermost.add(new GerminationCurve.Step(
                            edge.day(), edges.get(i + 1).day(), 0));
                }
            } else {
                last[edge.of()] = innermost.size() - 1;
            }
        }
        int[] seeds = distinct.stream().mapToInt(counts::get).toArray();
        return new IntervalLikelihood(innermost, first, last, seeds, times.size());
    }

    /** A beginning or an end; at one day, what begins with the day itself comes first, then ends, then what begins after it. */
    private record Edge(double day, int order, int of) {
        static final Comparator<Edge> IN_ORDER =
                Comparator.comparingDouble(Edge::day).thenComparingInt(Edge::order);

        boolean opens() {
            return order != 1;
        }
    }

    private static List<Edge> edges(List<SproutingTime> times) {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < times.size(); i++) {
            SproutingTime time = times.get(i);
            edges.add(new Edge(time.after(), time.exact() ? 0 : 2, i));
            edges.add(new Edge(time.by(), 1, i));
        }
        edges.sort(Edge.IN_ORDER);
        return edges;
    }

    GerminationCurve maximize() {
        double[] shares = new double[innermost.size()];
        Arrays.fill(shares, 1.0 / shares.length);
        for (int round = 0; round < MOST_ROUNDS && !isMaximum(shares); round++) {
            shares = better(selfConsistent(shares));
        }
        return curve(shares);
    }

    private GerminationCurve curve(double[] shares) {
        List<GerminationCurve.Step> steps = new ArrayList<>();
        double never = 0;
        for (int j = 0; j < shares.length; j++) {
            GerminationCurve.Step step = innermost.get(j);
            if (Double.isInfinite(step.by())) {
                never = shares[j];
            } else if (shares[j] > TOLERANCE) {
                steps.add(new GerminationCurve.Step(step.after(), step.by(), shares[j]));
            }
        }
        return new GerminationCurve(steps, never);
    }

    /** The chance of what was seen of one seed. */
    private double chance(int i, double[] shares) {
        double sum = 0;
        for (int j = first[i]; j <= last[i]; j++) {
            sum += shares[j];
        }
        return Math.max(SMALLEST, sum);
    }

    private double logarithm(double[] shares) {
        double sum = 0;
        for (int i = 0; i < seeds.length; i++) {
            sum += seeds[i] * Math.log(chance(i, shares));
        }
        return sum;
    }

    /** How much the logarithm gains by more share in each innermost interval. */
    private double[] slope(double[] shares) {
        double[] slope = new double[shares.length];
        for (int i = 0; i < seeds.length; i++) {
            double gain = seeds[i] / chance(i, shares);
            for (int j = first[i]; j <= last[i]; j++) {
                slope[j] += gain;
            }
        }
        return slope;
    }

    /** Kuhn and Tucker: nowhere would more share gain more than it costs, and what has share gains just that. */
    private boolean isMaximum(double[] shares) {
        double[] slope = slope(shares);
        for (int j = 0; j < shares.length; j++) {
            double excess = slope[j] / total - 1;
            if (excess > TOLERANCE || excess * shares[j] < -TOLERANCE) {
                return false;
            }
        }
        return true;
    }

    private double[] selfConsistent(double[] shares) {
        double[] slope = slope(shares);
        double[] next = new double[shares.length];
        for (int j = 0; j < next.length; j++) {
            next[j] = shares[j] * slope[j] / total;
        }
        return next;
    }

    /** One step of the convex minorant, halved until it climbs. */
    private double[] better(double[] shares) {
        double[] aim = ConvexMinorant.step(shares, first, last, seeds);
        double before = logarithm(shares);
        for (double part = 1; part > 1e-6; part /= 2) {
            double[] tried = mixed(shares, aim, part);
            if (logarithm(tried) > before) {
                return tried;
            }
        }
        return shares;
    }

    private static double[] mixed(double[] from, double[] to, double part) {
        double[] mixed = new double[from.length];
        for (int j = 0; j < mixed.length; j++) {
            mixed[j] = (1 - part) * from[j] + part * to[j];
        }
        return mixed;
    }
}
