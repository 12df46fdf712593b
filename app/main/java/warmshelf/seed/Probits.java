package warmshelf.seed;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** Shares as probits (normal equivalent deviates): 0 is one half, 1.645 is 95 %. In them seed ages along a straight line. */
final class Probits {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    private Probits() {}

    static double of(double share) {
        return NORMAL.inverseCumulativeProbability(share);
    }

    static double share(double probits) {
        return NORMAL.cumulativeProbability(probits);
    }
}
