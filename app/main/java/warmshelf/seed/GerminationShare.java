package warmshelf.seed;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * The share of a lot's seeds that come up, 0 to 1: known exactly, or uncertain as a beta distribution tells it.
 *
 * <p>An uncertain share keeps the doubt of a small test: 17 of 20 is not 85 %.
 */
public sealed interface GerminationShare {

    /** The expected share. */
    double mean();

    /** The chance that at least one of {@code seeds} seeds comes up. */
    double atLeastOneOf(int seeds);

    /**
     * The middle range that holds the share with the given probability, leaving the same chance on either side.
     *
     * @param probability more than 0, less than 1; usually 0.9 or 0.95
     */
    ShareInterval interval(double probability);

    /** A share that is taken as known. */
    static GerminationShare exactly(double share) {
        return new Exact(share);
    }

    /** What a test alone says, without any other knowledge of the seed. */
    static Uncertain tested(int germinated, int seeds) {
        return Uncertain.UNKNOWN.afterTest(germinated, seeds);
    }

    /** A share known exactly: more than 0, at most 1. */
    record Exact(double mean) implements GerminationShare {
        public Exact {
            if (!(mean > 0 && mean <= 1)) {
                throw new IllegalArgumentException("a share lies above 0 and at most at 1, was " + mean);
            }
        }

        @Override
        public double atLeastOneOf(int seeds) {
            return 1 - Math.pow(1 - mean, seeds);
        }

        @Override
        public ShareInterval interval(double probability) {
            return new ShareInterval(mean, mean);
        }
    }

    /** A share that follows the distribution Beta(a, b): like having seen a seeds come up and b fail. */
    record Uncertain(double a, double b) implements GerminationShare {
        /** Knowing nothing: the prior of Jeffreys (1946), Beta(1/2, 1/2), usual for a share. */
        static final Uncertain UNKNOWN = new Uncertain(0.5, 0.5);

        public Uncertain {
            // Below one half the distribution piles up at 0 or 1, a certainty that nobody has about seed.
            if (!(a >= 0.5 && b >= 0.5)) {
                throw new IllegalArgumentException("a share needs a and b of at least 0.5, was " + a + " and " + b);
            }
        }

        /** What is known after a further test of the same lot. */
        public Uncertain afterTest(int germinated, int seeds) {
            if (germinated < 0 || germinated > seeds) {
                throw new IllegalArgumentException(germinated + " of " + seeds + " cannot have come up");
            }
            return new Uncertain(a + germinated, b + seeds - germinated);
        }

        @Override
        public double mean() {
            return a / (a + b);
        }

        @Override
        public double atLeastOneOf(int seeds) {
            // The chance that all fail, one seed after the other, each failure making the next likelier.
            double noneOfThem = 1;
            for (int failed = 0; failed < seeds; failed++) {
                noneOfThem *= (b + failed) / (a + b + failed);
            }
            return 1 - noneOfThem;
        }

        @Override
        public ShareInterval interval(double probability) {
            BetaDistribution distribution = BetaDistribution.of(a, b);
            double tail = (1 - probability) / 2;
            return new ShareInterval(
                    distribution.inverseCumulativeProbability(tail), distribution.inverseSurvivalProbability(tail));
        }
    }
}
