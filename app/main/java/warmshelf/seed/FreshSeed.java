package warmshelf.seed;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.statistics.distribution.BetaDistribution;
import warmshelf.crop.Crop;
import warmshelf.seed.GerminationShare.Uncertain;

/**
 * What may be expected of seed of this year that nobody in the group has tested.
 *
 * <p>Bought packets: 7 CFR 201.31 names the least germination of vegetable seed in US trade. It is a floor, not an average: a
 * packet that tested below it must say so. So the legal minimum is taken for the lower end, below which one packet in ten is
 * believed to have fallen since its test, and the middle of what is left above it for the average. That one in ten and that
 * middle are our assumptions; with them ten plants, nine times in ten, need 13 to 19 seeds, which is what gardeners do anyway
 * (common practice: one and a half to two seeds for each plant of a fresh packet).
 *
 * <p>Saved and swapped seed: nobody had to test, clean or grade it, so the average is taken lower, at a quarter of the way from
 * the minimum to all, and it counts only as much as a test of {@value #SAVED_IS_WORTH} seeds. Our assumption as well.
 */
final class FreshSeed {
    static final double ONE_IN_TEN = 0.1;
    private static final int SAVED_IS_WORTH = 4;
    // Where the law names no minimum (flowers, most herbs): our assumption, in the middle of the law's range.
    private static final double USUAL_MINIMUM = 0.60;
    private static final double MOST_WORTH = 1000;
    private static final int HALVINGS = 50;

    /** By the legal minimum, of which there are a dozen: finding one takes fifty looks at a distribution. */
    private static final Map<Double, Uncertain> PACKETS = new ConcurrentHashMap<>();

    private FreshSeed() {}

    static Uncertain of(Crop crop, SeedSource source) {
        double minimum = minimum(crop);
        return source == SeedSource.PACKET
                ? PACKETS.computeIfAbsent(minimum, FreshSeed::packet)
                : weighing(SAVED_IS_WORTH, minimum + (1 - minimum) / 4);
    }

    /** The legal minimum, 0 to 1, or what stands for it. */
    static double minimum(Crop crop) {
        Integer percent = crop.legalMinimumPercent();
        return percent == null ? USUAL_MINIMUM : percent / 100.0;
    }

    /** The average of bought packets. */
    static double packetMean(Crop crop) {
        return (1 + minimum(crop)) / 2;
    }

    /** The heavier the belief, the narrower it is and the less of it lies below the minimum; so halving finds its weight. */
    private static Uncertain packet(double minimum) {
        double mean = (1 + minimum) / 2;
        double light = 0.5 / Math.min(mean, 1 - mean);
        double heavy = MOST_WORTH;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (light + heavy) / 2;
            Uncertain belief = weighing(middle, mean);
            double below = BetaDistribution.of(belief.a(), belief.b()).cumulativeProbability(minimum);
            if (below > ONE_IN_TEN) {
                light = middle;
            } else {
                heavy = middle;
            }
        }
        return weighing(heavy, mean);
    }

    private static Uncertain weighing(double seeds, double mean) {
        return new Uncertain(seeds * mean, seeds * (1 - mean));
    }
}
