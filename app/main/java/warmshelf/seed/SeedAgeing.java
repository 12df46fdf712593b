package warmshelf.seed;

import java.util.Optional;
import org.apache.commons.statistics.distribution.BetaDistribution;
import warmshelf.crop.Crop;
import warmshelf.seed.GerminationShare.Uncertain;

/**
 * How a crop's seed ages as it is kept: in probits along a line, after Ellis and Roberts (1980).
 *
 * <p>Where the species' constants are published and somebody knows how the seed is kept, their equation says how steep the line
 * is. A review of 2020 (Frontiers in Plant Science 11:1007) found such predictions higher, often much higher, than what became
 * of real seed, so that never more than {@value StoredLife#AT_MOST_TIMES} times the crop's usual packet life is believed.
 * Everywhere else the usual life decides: see {@link StoredLife}.
 */
public final class SeedAgeing {
    // Slices of equal chance of what was believed before, and tenths of how fast it may have aged.
    private static final int SLICES = 20;
    // Seed may have aged one and a half times as fast as reckoned, or as slowly, in one case of six each: the 10th,
    // 30th,
    // 50th, 70th and 90th hundredth of a lognormal factor with the deviation of ln 1.5. Our assumption, after the
    // review above.
    static final double HASTE_OF_ONE_IN_TEN = 1.682;
    private static final double HASTE_OF_THREE_IN_TEN = 1.237;
    private static final double[] HASTES = {
        1 / HASTE_OF_ONE_IN_TEN, 1 / HASTE_OF_THREE_IN_TEN, 1, HASTE_OF_THREE_IN_TEN, HASTE_OF_ONE_IN_TEN
    };
    // A belief in dead seed weighs at most as much as a test of about this many, so that a real test can refute it.
    private static final double MOST_AGAINST = 7.5;

    private final Crop crop;
    private final Storage storage;

    public SeedAgeing(Crop crop, Storage storage) {
        this.crop = crop;
        this.storage = storage;
    }

    /** The probits lost in the years since the seed was fresh. */
    public double loss(double years) {
        StoredLife usual = StoredLife.of(crop);
        if (storage.conditions().isEmpty()) {
            return usual.loss(years);
        }
        StorageKind.Conditions kept = storage.conditions().get();
        Optional<ViabilityEquation> equation = ViabilityTable.of(crop);
        return equation.isPresent()
                ? Math.max(
                        equation.get().loss(years, kept),
                        usual.times(StoredLife.AT_MOST_TIMES).loss(years))
                : usual.keptAt(kept).loss(years);
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
            for (double haste : HASTES) {
                double share = Probits.share(start - haste * lost);
                sum += share;
                squares += share * share;
            }
        }
        int points = SLICES * HASTES.length;
        double mean = sum / points;
        return fitted(mean, squares / points - mean * mean);
    }

    private static Uncertain fitted(double mean, double variance) {
        double weight = mean * (1 - mean) / Math.max(variance, 1e-12) - 1;
        double a = mean * weight;
        double b = (1 - mean) * weight;
        if (a < 0.5) {
            double against = Math.min(MOST_AGAINST, 0.5 * (1 - mean) / Math.max(mean, 1e-9));
            return new Uncertain(0.5, Math.max(b, against));
        }
        return new Uncertain(a, Math.max(0.5, b));
    }
}
