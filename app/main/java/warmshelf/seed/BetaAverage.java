package warmshelf.seed;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.gamma.LogBeta;

/** The average of something over an uncertain share. */
final class BetaAverage {
    private static final int STEPS = 2000;

    private BetaAverage() {}

    /**
     * The mean of {@code value} over Beta(a, b), by Simpson's rule in the angle t of p = sin² t. In that angle the density
     * has no poles for a and b of at least one half, so that the ends need no care.
     */
    static double of(double a, double b, DoubleUnaryOperator value) {
        double width = Math.PI / 2 / STEPS;
        double logScale = Math.log(2) - LogBeta.value(a, b);
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            double angle = i * width;
            double density = density(angle, a, b, logScale);
            if (density > 0) {
                double sine = Math.sin(angle);
                sum += simpsonWeight(i) * density * value.applyAsDouble(Math.min(1, sine * sine));
            }
        }
        return Math.min(1, sum * width / 3);
    }

    private static double density(double angle, double a, double b, double logScale) {
        return Math.exp(logScale + power(Math.sin(angle), 2 * a - 1) + power(Math.cos(angle), 2 * b - 1));
    }

    /** The logarithm of base to the exponent, where 0 to the 0 is 1. */
    private static double power(double base, double exponent) {
        return exponent == 0 ? 0 : exponent * Math.log(Math.max(0, base));
    }

    private static int simpsonWeight(int i) {
        if (i == 0 || i == STEPS) {
            return 1;
        }
        return i % 2 == 1 ? 4 : 2;
    }
}
