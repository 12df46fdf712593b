package warmshelf.seed;

/**
 * The chance that more will still come of seed that is late.
 *
 * <p>Each seed is good with a share g, which is uncertain (a beta distribution), and good seed has shown by now with the chance F
 * that the crop's spread of days gives. Of n seeds k have shown. By Bayes' rule none of the m = n - k others will ever come with
 * the chance
 *
 * <pre>E[g^k (1 - g)^m] / E[g^k (1 - g F)^m]</pre>
 *
 * over the beta distribution: all m are bad, against all m being bad or late. Both are integrals over the log odds u of g, where the
 * density is g^a (1 - g)^b up to a factor that cancels; they fall away at both ends, so the trapezoidal rule on even steps is as good
 * as exact (Trefethen and Weideman, "The exponentially convergent trapezoidal rule", SIAM Review 56, 2014). Both are summed at the
 * same points, so that they stay consistent.
 */
public final class LateSeed {
    private static final double WIDEST_STEP = 0.1;
    private static final double STEPS_IN_WIDTH = 8;
    /** What is smaller than the greatest by e to this power adds nothing that a double could hold. */
    private static final double NOTHING = 40;
    /** The share of its last steepness that the density's logarithm has at least, one unit of log odds past its outermost peaks. */
    private static final double STEEPNESS = 1 - 1 / Math.E;

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
        double first = share.a() + shown;
        double last = share.b() + missing;
        double step = Math.min(WIDEST_STEP, Math.sqrt(1 / first + 1 / last) / STEPS_IN_WIDTH);
        // All peaks lie between those for F = 1 and F = 0.
        double from = Math.log(first / last) - 1 - NOTHING / (STEEPNESS * first);
        double to = Math.log(first / share.b()) + 1 + NOTHING / (STEEPNESS * share.b());
        int points = (int) Math.ceil((to - from) / step);
        double[] noneMore = new double[points];
        double[] asSeen = new double[points];
        double greatest = Double.NEGATIVE_INFINITY;
        for (int point = 0; point < points; point++) {
            double odds = from + point * step;
            double bad = -Math.max(odds, 0) - Math.log1p(Math.exp(-Math.abs(odds)));
            double good = odds + bad;
            double before = first * good + share.b() * bad;
            noneMore[point] = before + missing * bad;
            asSeen[point] = before + missing * Math.log(Math.exp(bad) + Math.exp(good) * (1 - shownByNow));
            greatest = Math.max(greatest, asSeen[point]);
        }
        double none = 0;
        double seen = 0;
        for (int point = 0; point < points; point++) {
            none += Math.exp(noneMore[point] - greatest);
            seen += Math.exp(asSeen[point] - greatest);
        }
        return 1 - none / seen;
    }
}
