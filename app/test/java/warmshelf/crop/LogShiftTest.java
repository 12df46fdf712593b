package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class LogShiftTest {
    /**
     * By hand, after the formula of Gelman et al., Bayesian Data Analysis, chapter 2 (normal data with known variance; from
     * memory): precisions 1/0.04 = 25 and 1/0.0625 = 16 add up to 41; the mean is (25 · 0 + 16 · 0.2) / 41.
     */
    @Test
    void precisions_add_up_and_weigh_the_means() {
        LogShift after = new LogShift(0, 0.04).after(0.2, 0.0625);

        assertThat(after.variance()).isCloseTo(1 / 41.0, within(1e-12));
        assertThat(after.mean()).isCloseTo(3.2 / 41, within(1e-12));
    }

    @Test
    void it_is_the_belief_that_integrating_prior_times_likelihood_gives() {
        LogShift after = new LogShift(0.05, 0.04).after(0.31, 0.07).after(-0.02, 0.11);
        NormalDistribution prior = new NormalDistribution(0.05, Math.sqrt(0.04));
        NormalDistribution noise = new NormalDistribution(0, Math.sqrt(0.07));
        NormalDistribution otherNoise = new NormalDistribution(0, Math.sqrt(0.11));
        UnivariateFunction both =
                shift -> prior.density(shift) * noise.density(0.31 - shift) * otherNoise.density(-0.02 - shift);

        double all = integral(both);
        double mean = integral(shift -> shift * both.value(shift)) / all;
        double square = integral(shift -> shift * shift * both.value(shift)) / all;

        assertThat(after.mean()).isCloseTo(mean, within(1e-8));
        assertThat(after.variance()).isCloseTo(square - mean * mean, within(1e-8));
    }

    private static double integral(UnivariateFunction function) {
        return new SimpsonIntegrator(1e-10, 1e-12, 8, 40).integrate(1_000_000, function, -3, 3);
    }

    @Test
    void the_order_of_what_is_measured_does_not_matter() {
        LogShift one = new LogShift(0, 0.04).after(0.3, 0.05).after(0.1, 0.09);
        LogShift other = new LogShift(0, 0.04).after(0.1, 0.09).after(0.3, 0.05);

        assertThat(one.mean()).isCloseTo(other.mean(), within(1e-12));
        assertThat(one.variance()).isCloseTo(other.variance(), within(1e-12));
    }

    @Test
    void a_belief_without_any_doubt_is_refused() {
        assertThatThrownBy(() -> new LogShift(0, 0)).hasMessage("variance must be above 0, was 0.0");
    }
}
