package warmshelf.seed;

import org.apache.commons.statistics.distribution.NormalDistribution;
import warmshelf.crop.Crop;

/**
 * What may be expected of seed that nobody has tested, from its crop and its age: a band, not a promise.
 *
 * <p>Fresh seed: the minimum germination that the law asks of vegetable seed in US trade (7 CFR 201.31). Seed older than its
 * usual life: viability in probits falls in a straight line with age (the form of Ellis and Roberts, 1980), here by one
 * probit for each further usual life. That slope is ours and on the cautious side: for pepper it is one probit in two years,
 * where the published constants give one in 2.6 years at 7 % moisture and 20 °C.
 */
public final class AgedSeed {
    // What is expected counts only as much as a test of this many seeds, so that a real test of ten outweighs it.
    private static final double WORTH_IN_SEEDS = 8;
    // Where the law names no minimum (flowers, most herbs): our assumption, in the middle of the law's range.
    private static final double USUAL_MINIMUM = 0.60;
    // Where no source gives a life: our assumption, the commonest figure of the crop table being four.
    private static final int USUAL_LIFE_YEARS = 3;

    private AgedSeed() {}

    /**
     * The expected share of a lot.
     *
     * @param ageYears season of sowing minus the year on the packet; 0 or more
     */
    public static GerminationShare.Uncertain of(Crop crop, int ageYears) {
        if (ageYears < 0) {
            throw new IllegalArgumentException("seed is at least 0 years old, was " + ageYears);
        }
        Integer legalMinimum = crop.legalMinimumPercent();
        Integer seedLife = crop.seedLifeYears();
        double fresh = legalMinimum == null ? USUAL_MINIMUM : legalMinimum / 100.0;
        int life = seedLife == null ? USUAL_LIFE_YEARS : Math.max(1, seedLife);
        double probits = probitOf(fresh) - Math.max(0, ageYears - life) / (double) life;
        double a = Math.max(0.5, WORTH_IN_SEEDS * shareOf(probits));
        return new GerminationShare.Uncertain(a, Math.max(0.5, WORTH_IN_SEEDS - a));
    }

    private static double probitOf(double share) {
        return NormalDistribution.of(0, 1).inverseCumulativeProbability(share);
    }

    private static double shareOf(double probits) {
        return NormalDistribution.of(0, 1).cumulativeProbability(probits);
    }
}
