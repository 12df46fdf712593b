package warmshelf.seed;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * The chance that more will still come of seed that is late.
 *
 * <p>Each seed is good with a share g, which is uncertain (a beta distribution), and good seed has shown by now with the chance F
 * that the crop's spread of days gives. Of n seeds k have shown. By Bayes' rule none of the m = n - k others will ever come with
 * the chance
 *
 * <pre>E[g^k (1 - g)^m] / E[g^k (1 - g F)^m]</pre>
 *
 * over the beta distribution: all m are bad, against all m being bad or late. The upper mean is a ratio of beta functions; both are
 * summed here over the same 2,000 slices of equal chance, so that they stay consistent.
 */
public final class LateSeed {
    private static final int SLICES = 2_000;

    private LateSeed() {}

    /**
     * The chance, 0 to 1, that at least one more comes.
     *
     * @param share what was known of the seed before it was sown
     * @param sown how many seeds
     * @param shown how many have shown so far
     * @param shownByNow the share of good seed that has shown by now, 0 to 1, if all goes as usual
     */
    public static double chanceOfMore(GerminationShare.Uncertain share, int sown, int shown, double shownByNow) {
        if (shown < 0 || shown > sown || !(shownByNow >= 0 && shownByNow <= 1)) {
            throw new IllegalArgumentException("%d of %d seeds cannot have shown where %f of the good ones should"
                    .formatted(shown, sown, shownByNow));
        }
        int missing = sown - shown;
        if (missing == 0) {
            return 0;
        }
        BetaDistribution belief = BetaDistribution.of(share.a(), share.b());
        double[] noneMore = new double[SLICES];
        double[] asSeen = new double[SLICES];
        double greatest = Double.NEGATIVE_INFINITY;
        for (int slice = 0; slice < SLICES; slice++) {
            double good = belief.inverseCumulativeProbability((slice + 0.5) / SLICES);
            double shownPart = shown == 0 ? 0 : shown * Math.log(good);
            noneMore[slice] = shownPart + missing * Math.log1p(-good);
            asSeen[slice] = shownPart + missing * Math.log1p(-good * shownByNow);
            greatest = Math.max(greatest, asSeen[slice]);
        }
        double none = 0;
        double seen = 0;
        for (int slice = 0; slice < SLICES; slice++) {
            none += Math.exp(noneMore[slice] - greatest);
            seen += Math.exp(asSeen[slice] - greatest);
        }
        return 1 - none / seen;
    }
}
