package warmshelf.finding.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.math3.stat.inference.ChiSquareTest;
import org.junit.jupiter.api.Test;

class TrialDrawTest {
    @Test
    void each_way_gets_its_seeds_and_lies_in_one_place() {
        TrialDraw draw = TrialDraw.of(42, List.of("A", "B", "C"), 20);

        assertThat(draw.dealt()).hasSize(60);
        for (String way : List.of("A", "B", "C")) {
            assertThat(draw.dealt().chars().filter(letter -> letter == way.charAt(0)))
                    .hasSize(20);
            assertThat(draw.laidOut()).containsOnlyOnce(way);
        }
        assertThat(draw.tens()).hasSize(6).allSatisfy(ten -> assertThat(ten).hasSize(10));
    }

    /** The documentation of java.util lays down the generator and the shuffling; a reckoning in Python of both gave the same letters. */
    @Test
    void the_same_number_gives_the_same_draw_for_ever() {
        assertThat(TrialDraw.of(7, List.of("A", "B"), 6)).isEqualTo(TrialDraw.of(7, List.of("A", "B"), 6));
        assertThat(TrialDraw.of(7, List.of("A", "B"), 6).dealt()).isEqualTo("AAABBBBABABA");
        assertThat(TrialDraw.of(8, List.of("A", "B"), 6).dealt()).isNotEqualTo("AAABBBBABABA");
    }

    /** The six orders of three places, in 6,000 draws, by the chi-square test of Apache commons-math. */
    @Test
    void no_order_of_places_is_favoured() {
        List<String> orders = List.of("ABC", "ACB", "BAC", "BCA", "CAB", "CBA");
        long[] seen = new long[6];
        for (int number = 1; number <= 6000; number++) {
            seen[orders.indexOf(TrialDraw.of(number, List.of("A", "B", "C"), 8).laidOut())]++;
        }

        double[] expected = {1000, 1000, 1000, 1000, 1000, 1000};
        assertThat(new ChiSquareTest().chiSquareTest(expected, seen)).isGreaterThan(0.001);
    }
}
