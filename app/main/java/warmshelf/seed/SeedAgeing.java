package warmshelf.seed;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import warmshelf.crop.Crop;
import warmshelf.seed.GerminationShare.Uncertain;

/**
 * How a crop's seed ages as it is kept: in probits along a straight line, after Ellis and Roberts (1980), whose steepness is
 * known only roughly.
 *
 * <p>The line comes from the kind's half-life in a room ({@link HalfLife}), shifted by how the lot is kept ({@link StorageShift}).
 * The published equation with its constants is not used for lots: what became of real seed was often much worse than it said
 * (Frontiers in Plant Science 2020, 11:1007). It answers where conditions are given, in {@link ViabilityCommand}.
 */
public final class SeedAgeing {
    /** The probits from 95 %, the usual start of the studies, to one half. */
    static final double PROBITS_OF_A_HALF_LIFE = Probits.of(0.95);
    // Two lots of one kind kept alike commonly differ by a factor of two in the years they live: for a lognormal
    // factor,
    // a deviation of ln 2 / 0.95. Our assumption; Nagel and Börner (2009) report such differences without a figure that
    // we could read.
    private static final double LOTS_DIFFER = 0.7;
    // Slices of equal chance of what was believed before, and of how fast it may have aged.
    private static final int SLICES = 20;
    private static final int HASTES = 20;
    // A belief in dead seed weighs at most as much as a test of about this many, so that a real test can refute it.
    private static final double MOST_AGAINST = 7.5;

    private final double lossPerYear;
    private final double doubt;

    public SeedAgeing(Crop crop, Storage storage) {
        this(HalfLife.of(crop), StorageShift.of(storage));
    }

    SeedAgeing(HalfLife life, StorageShift kept) {
        lossPerYear = PROBITS_OF_A_HALF_LIFE / (life.years() * kept.times());
        doubt = Math.hypot(Math.hypot(life.doubt(), kept.doubt()), LOTS_DIFFER);
    }

    /** The probits lost in the years since the seed was fresh, by a lot in the middle of all. */
    public double loss(double years) {
        return years * lossPerYear;
    }

    /** Factor on the loss above which one lot in ten lies, and below whose inverse one in ten lies. */
    double hasteOfOneInTen() {
        return haste(0.9);
    }

    /** Years until half of the seed of a middling lot is dead, of which this share lived at the start. */
    double halfLifeYears(double start) {
        return Math.max(0, Probits.of(start)) / lossPerYear;
    }

    /**
     * What is known of seed after more years, when something was known of it before: the average falls and the doubt grows.
     * Fitted by mean and variance.
     */
    public Uncertain aged(Uncertain before, double fromYears, double toYears) {
        double lost = loss(toYears) - loss(fromYears);
        if (lost <= 0) {
            return before;
        }
        BetaDistribution belief = BetaDistribution.of(before.a(), before.b());
        double sum = 0;
        double squares = 0;
        for (int slice = 0; slice < SLICES; slice++) {
            double start = Probits.of(belief.inverseCumulativeProbability((slice + 0.5) / SLICES));
            for (int fast = 0; fast < HASTES; fast++) {
                double share = Probits.share(start - haste((fast + 0.5) / HASTES) * lost);
                sum += share;
                squares += share * share;
            }
        }
        int points = SLICES * HASTES;
        double mean = sum / points;
        return fitted(mean, squares / points - mean * mean);
    }

    private double haste(double chance) {
        return Math.exp(doubt * NormalDistribution.of(0, 1).inverseCumulativeProbability(chance));
    }

    private static Uncertain fitted(double mean, double variance) {
        double weight = mean * (1 - mean) / Math.max(variance, 1e-12) - 1;
        double a = mean * weight;
        double b = (1 - mean) * weight;
        if (a < 0.5 && mean < 0.5) {
            double against = Math.min(MOST_AGAINST, 0.5 * (1 - mean) / Math.max(mean, 1e-9));
            return new Uncertain(0.5, Math.max(b, against));
        }
        return b < 0.5 ? new Uncertain(0.5 * mean / (1 - mean), 0.5) : new Uncertain(a, b);
    }
}
