package warmshelf.frost.minima;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Quantiles held against commons-math3, a library that the application itself does not use. */
class DaySampleTest {
    private static final double[] SHARES = {0.02, 0.1, 0.25, 0.3, 0.5, 0.7, 0.9, 0.98};

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 7, 10, 30, 101})
    void counted_quantiles_are_the_reference_librarys_type_eight(int size) {
        double[] days = new Random(size).doubles(size, 90, 150).toArray();
        Percentile reference = new Percentile().withEstimationType(EstimationType.R_8);
        reference.setData(days);

        for (double share : SHARES) {
            assertThat(new DaySample(days).counted(share)).isCloseTo(reference.evaluate(100 * share), within(1e-9));
        }
    }

    @Test
    void fitted_quantiles_are_the_reference_librarys_normal_ones() {
        DaySample sample = new DaySample(100, 110, 120, 130, 140); // mean 120, variance 1000 / 4
        NormalDistribution reference = new NormalDistribution(120, Math.sqrt(250));

        for (double share : SHARES) {
            assertThat(sample.fitted(share)).isCloseTo(reference.inverseCumulativeProbability(share), within(1e-6));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 10, 30})
    void the_interval_holds_the_true_one_in_ten_day_about_nine_times_of_ten(int seasons) {
        Random draws = new Random(20270301L + seasons);
        double truth = 120 + 12 * new NormalDistribution().inverseCumulativeProbability(0.9);
        int held = 0;
        int trials = 4000;
        for (int trial = 0; trial < trials; trial++) {
            double[] days = draws.doubles(0, 1)
                    .limit(seasons)
                    .map(unused -> 120 + 12 * draws.nextGaussian())
                    .toArray();
            DaySample sample = new DaySample(days);
            held += Math.abs(sample.fitted(0.9) - truth) <= sample.halfWidth(0.9) ? 1 : 0;
        }

        assertThat((double) held / trials).isBetween(0.84, 0.93);
    }

    @Test
    void one_season_alone_has_no_spread() {
        DaySample one = new DaySample(120);

        assertThat(one.fitted(0.9)).isEqualTo(120);
        assertThat(one.halfWidth(0.9)).isNaN();
    }
}
