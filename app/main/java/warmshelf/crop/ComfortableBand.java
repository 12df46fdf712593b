package warmshelf.crop;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where seed comes up both well and fast. First the temperatures that give at least 90 % of the best share of normal
 * seedlings (those whose share was not recorded count as good); among these the fastest emergence; then all around it that
 * need at most 25 % more days. In this order because some seed is fastest where half of it is lost (spinach at 25 C).
 *
 * @param bestC temperature of the fastest emergence, the middle where it is equally fast over a span
 */
record ComfortableBand(double bestC, CelsiusRange range) {
    /** What is known well enough of a temperature to judge by. */
    interface Known {
        Optional<Emergence> at(double celsius);
    }

    private static final double GOOD_SHARE = 0.90;
    private static final double SLOWEST = 1.25;
    private static final int STEPS_PER_DEGREE = 10;
    private static final double ROUNDING = 1e-9;

    static ComfortableBand of(CelsiusRange among, Known response) {
        double bestShare = bestShare(among, response);
        List<Double> good = temperatures(among).stream()
                .filter(celsius -> isGood(response, celsius, bestShare))
                .toList();
        double fastest = good.stream()
                .mapToDouble(celsius -> days(response, celsius))
                .min()
                .orElseThrow();
        List<Double> best = good.stream()
                .filter(celsius -> days(response, celsius) <= fastest + ROUNDING)
                .toList();
        double bestC = rounded((best.get(0) + best.get(best.size() - 1)) / 2);
        return new ComfortableBand(bestC, around(best.get(0), good, response, SLOWEST * fastest + ROUNDING));
    }

    /** The unbroken run of good and fast enough temperatures on both sides of the start. */
    private static CelsiusRange around(double start, List<Double> good, Known response, double mostDays) {
        double low = start;
        double high = start;
        while (good.contains(step(low, -1)) && days(response, step(low, -1)) <= mostDays) {
            low = step(low, -1);
        }
        while (good.contains(step(high, 1)) && days(response, step(high, 1)) <= mostDays) {
            high = step(high, 1);
        }
        return new CelsiusRange(low, high);
    }

    private static boolean isGood(Known response, double celsius, double best) {
        return response.at(celsius)
                .map(emergence -> emergence.normalShare().orElse(best) >= GOOD_SHARE * best - ROUNDING)
                .orElse(false);
    }

    private static double bestShare(CelsiusRange among, Known response) {
        return temperatures(among).stream()
                .map(response::at)
                .flatMap(Optional::stream)
                .mapToDouble(emergence -> emergence.normalShare().orElse(0))
                .max()
                .orElse(0);
    }

    private static double days(Known response, double celsius) {
        return response.at(celsius).map(Emergence::days).orElse(Double.POSITIVE_INFINITY);
    }

    private static List<Double> temperatures(CelsiusRange range) {
        return IntStream.rangeClosed((int) Math.round(range.low() * STEPS_PER_DEGREE), (int)
                        Math.round(range.high() * STEPS_PER_DEGREE))
                .mapToObj(tenth -> (double) tenth / STEPS_PER_DEGREE)
                .toList();
    }

    private static double step(double celsius, int steps) {
        return (double) (Math.round(celsius * STEPS_PER_DEGREE) + steps) / STEPS_PER_DEGREE;
    }

    private static double rounded(double celsius) {
        return (double) Math.round(celsius * STEPS_PER_DEGREE) / STEPS_PER_DEGREE;
    }
}
