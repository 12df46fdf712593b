package warmshelf.seed;

import java.util.function.IntToDoubleFunction;
import org.apache.commons.numbers.gamma.LogBeta;

/** Successes in a number of trials whose share of success is itself uncertain, Beta(a, b). */
final class BetaBinomial {
    private BetaBinomial() {}

    /**
     * The chance of at least {@code wanted} successes in {@code trials}.
     *
     * <p>Sums the chances of 0, 1, ... wanted - 1 from the first by the ratio of neighbours,
     * P(x+1) / P(x) = (n-x)(a+x) / ((x+1)(n-x-1+b)), with P(0) = B(a, n+b) / B(a, b). In logarithms, because P(0) is too
     * small for a double as soon as a few thousand plants are wanted.
     */
    static double atLeast(int wanted, int trials, double a, double b) {
        if (wanted > trials) {
            return 0;
        }
        double log = LogBeta.value(a, trials + b) - LogBeta.value(a, b);
        double largest = Double.NEGATIVE_INFINITY;
        double sum = 0; // of the chances so far, as multiples of the largest
        for (int x = 0; x < wanted; x++) {
            if (log > largest) {
                sum = sum * Math.exp(largest - log) + 1;
                largest = log;
            } else {
                sum += Math.exp(log - largest);
            }
            log += logRatio(x, trials, a, b);
        }
        return Math.max(0, 1 - sum * Math.exp(largest));
    }

    /** The mean of {@code value} over the number of successes in {@code trials}, each weighed by its chance. */
    static double average(int trials, double a, double b, IntToDoubleFunction value) {
        double log = LogBeta.value(a, trials + b) - LogBeta.value(a, b);
        double sum = 0;
        for (int x = 0; x <= trials; x++) {
            sum += Math.exp(log) * value.applyAsDouble(x);
            log += logRatio(x, trials, a, b);
        }
        return Math.min(1, sum);
    }

    /** Of the chance of one success more to that of {@code x}. */
    private static double logRatio(int x, int trials, double a, double b) {
        return Math.log((trials - x) * (a + x) / ((x + 1) * (trials - x - 1 + b)));
    }
}
