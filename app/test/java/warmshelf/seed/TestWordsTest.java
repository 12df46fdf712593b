package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;

class TestWordsTest {
    @Test
    void ten_seeds_say_little_and_fifty_say_more() {
        // The interval of Jeffreys by commons-math3: 0.49 to 0.95, and 0.67 to 0.89.
        BetaDistribution ten = new BetaDistribution(8.5, 2.5);
        BetaDistribution fifty = new BetaDistribution(40.5, 10.5);
        assertThat(Math.round(20 * ten.inverseCumulativeProbability(0.025))).isEqualTo(10);
        assertThat(Math.round(20 * ten.inverseCumulativeProbability(0.975))).isEqualTo(19);
        assertThat(Math.round(20 * fifty.inverseCumulativeProbability(0.025))).isEqualTo(13);
        assertThat(Math.round(20 * fifty.inverseCumulativeProbability(0.975))).isEqualTo(18);

        assertThat(says(8, 10))
                .isEqualTo(
                        "8 of 10: between about 5 and 9½ in ten of this seed come up, as far as this test alone can say."
                                + " The same share of 50 seeds would narrow it to 6½ to 9 in ten.");
    }

    @Test
    void ten_of_ten_is_not_all() {
        assertThat(says(10, 10)).startsWith("10 of 10: between about 8 and 10 in ten");
    }

    @Test
    void none_of_ten_is_not_none() {
        assertThat(says(0, 10)).startsWith("0 of 10: between about 0 and 2 in ten");
    }

    @Test
    void a_large_test_needs_no_larger_one() {
        assertThat(says(180, 200)).doesNotContain("would narrow");
    }

    private static String says(int germinated, int seeds) {
        return TestWords.of(new GerminationTest(LocalDate.of(2027, 2, 1), germinated, seeds));
    }
}
