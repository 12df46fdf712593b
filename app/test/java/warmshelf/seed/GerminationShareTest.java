package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.seed.GerminationShare.Uncertain;

class GerminationShareTest {

    // The table of the reference collection (statistics.md, part e): 1-(1-p)^k.
    @ParameterizedTest
    @CsvSource({
        "0.50, 0.500, 0.750, 0.875, 0.938",
        "0.55, 0.550, 0.798, 0.909, 0.959",
        "0.60, 0.600, 0.840, 0.936, 0.974",
        "0.70, 0.700, 0.910, 0.973, 0.992",
        "0.80, 0.800, 0.960, 0.992, 0.998",
        "0.90, 0.900, 0.990, 0.999, 1.000"
    })
    void the_chance_of_a_cell_that_is_not_empty_is_that_of_the_table(
            double share, double one, double two, double three, double four) {
        GerminationShare known = GerminationShare.exactly(share);

        assertThat(known.atLeastOneOf(1)).isCloseTo(one, within(0.0005 + 1e-9));
        assertThat(known.atLeastOneOf(2)).isCloseTo(two, within(0.0005 + 1e-9));
        assertThat(known.atLeastOneOf(3)).isCloseTo(three, within(0.0005 + 1e-9));
        assertThat(known.atLeastOneOf(4)).isCloseTo(four, within(0.0005 + 1e-9));
    }

    // Common practice: two seeds to a cell as a safety margin; at 80 % that fills 96 cells of a hundred.
    @Test
    void two_seeds_to_a_cell_at_80_percent_give_96_percent() {
        assertThat(GerminationShare.exactly(0.8).atLeastOneOf(2)).isCloseTo(0.96, within(1e-12));
    }

    @Test
    void doubt_about_the_share_makes_empty_cells_likelier() {
        Uncertain tested = GerminationShare.tested(8, 10);

        assertThat(tested.atLeastOneOf(2))
                .isLessThan(GerminationShare.exactly(tested.mean()).atLeastOneOf(2));
        assertThat(tested.atLeastOneOf(1)).isCloseTo(tested.mean(), within(1e-12));
    }

    // Checked against commons-math3, another implementation than the one the application uses.
    @ParameterizedTest
    @CsvSource({"17, 20", "20, 20", "0, 10", "5, 25", "300, 700", "9000, 10000"})
    void intervals_of_a_tested_share_are_quantiles_of_the_beta_distribution(int germinated, int seeds) {
        Uncertain share = GerminationShare.tested(germinated, seeds);
        BetaDistribution reference = new BetaDistribution(germinated + 0.5, seeds - germinated + 0.5);

        assertThat(share.mean()).isCloseTo(reference.getNumericalMean(), within(1e-12));
        assertThat(share.interval(0.90).low()).isCloseTo(reference.inverseCumulativeProbability(0.05), within(1e-6));
        assertThat(share.interval(0.90).high()).isCloseTo(reference.inverseCumulativeProbability(0.95), within(1e-6));
        assertThat(share.interval(0.95).low()).isCloseTo(reference.inverseCumulativeProbability(0.025), within(1e-6));
        assertThat(share.interval(0.95).high()).isCloseTo(reference.inverseCumulativeProbability(0.975), within(1e-6));
    }

    @Test
    void a_known_share_has_no_interval() {
        assertThat(GerminationShare.exactly(0.8).interval(0.95)).isEqualTo(new ShareInterval(0.8, 0.8));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1.2, Double.NaN})
    void a_share_outside_0_to_1_is_refused(double share) {
        assertThatThrownBy(() -> GerminationShare.exactly(share)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void more_seedlings_than_seeds_are_refused() {
        assertThatThrownBy(() -> GerminationShare.tested(11, 10)).isInstanceOf(IllegalArgumentException.class);
    }
}
