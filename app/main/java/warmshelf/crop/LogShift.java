package warmshelf.crop;

/**
 * What is believed of how much later seed comes up than the published figures say: the logarithm of the one over the other,
 * as a normal distribution. 0 is as published, 0.1 about a tenth later.
 */
public record LogShift(double mean, double variance) {
    public LogShift {
        if (!(variance > 0)) {
            throw new IllegalArgumentException("variance must be above 0, was " + variance);
        }
    }

    /**
     * The belief after something was measured with a known variance: the two are averaged by their precisions (1 / variance),
     * which add up. Normal prior with normal likelihood of known variance: Gelman et al., Bayesian Data Analysis, chapter 2.
     */
    public LogShift after(double measured, double measuredVariance) {
        double precision = 1 / variance + 1 / measuredVariance;
        return new LogShift((mean / variance + measured / measuredVariance) / precision, 1 / precision);
    }

    /** The same belief of something that itself varies around this. */
    LogShift wider(double by) {
        return new LogShift(mean, variance + by);
    }

    /** What the published days are multiplied by: the median of the belief. */
    public double factor() {
        return Math.exp(mean);
    }
}
