package warmshelf.finding.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ManyComparisonsTest {
    /** Worked example of Holm's method, en.wikipedia.org/wiki/Holm-Bonferroni_method: 0.01, 0.04, 0.03, 0.005 become 0.03, 0.06, 0.06, 0.02. */
    @Test
    void four_chances_are_adjusted_as_in_the_worked_example() {
        assertThat(ManyComparisons.adjusted(0.01, 0.04, 0.03, 0.005))
                .containsExactly(new double[] {0.03, 0.06, 0.06, 0.02}, within(1e-12));
    }

    @Test
    void no_chance_exceeds_one() {
        assertThat(ManyComparisons.adjusted(0.9, 0.6)).containsExactly(1, 1);
        assertThat(ManyComparisons.adjusted()).isEmpty();
    }
}
