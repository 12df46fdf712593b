package warmshelf.finding.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.apache.commons.math3.stat.inference.TTest;
import org.junit.jupiter.api.Test;

class MeanEstimateTest {
    /** The additional hours of sleep of Student's own example (1908, Biometrika 6, p. 20): mean 1.58 over ten patients, p = 0.0028. */
    private static final double[] SLEEP = {1.2, 2.4, 1.3, 1.3, 0.0, 1.0, 1.8, 0.8, 4.6, 1.4};

    @Test
    void it_gives_the_mean_and_the_interval_of_students_example() {
        MeanEstimate estimate = MeanEstimate.of(SLEEP);

        assertThat(estimate.mean()).isCloseTo(1.58, within(1e-9));
        // 0.7001142 and 2.4598858 by the general statistics language R, t.test(extra, paired), data set 'sleep'
        assertThat(estimate.interval().low()).isCloseTo(0.7001142, within(1e-6));
        assertThat(estimate.interval().high()).isCloseTo(2.4598858, within(1e-6));
    }

    @Test
    void it_differs_from_nought_where_a_general_library_says_so() {
        double[] spread = {-3, 1, 4, -1, 2, -2};

        assertThat(new TTest().tTest(0, SLEEP)).isLessThan(0.05);
        assertThat(MeanEstimate.of(SLEEP).differsFromZero()).isTrue();
        assertThat(new TTest().tTest(0, spread)).isGreaterThan(0.05);
        assertThat(MeanEstimate.of(spread).differsFromZero()).isFalse();
        assertThat(MeanEstimate.of(spread).mean())
                .isCloseTo(new DescriptiveStatistics(spread).getMean(), within(1e-12));
    }

    @Test
    void one_figure_has_no_spread() {
        assertThatThrownBy(() -> MeanEstimate.of(new double[] {1})).isInstanceOf(IllegalArgumentException.class);
    }
}
