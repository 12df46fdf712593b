package warmshelf.finding.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.distribution.HypergeometricDistribution;
import org.junit.jupiter.api.Test;

class PermutationsTest {
    /**
     * All seeds that came did so at one look: then the log-rank scores take two values, and the test is Fisher's exact one. His tea
     * tasting (1935, The Design of Experiments): 3 of 4 against 1 of 4, p = 0.486 two-sided.
     */
    @Test
    void with_one_look_it_is_fishers_exact_test() {
        Arm milkFirst = new Arm("milk first", times(3, 1));
        Arm teaFirst = new Arm("tea first", times(1, 3));
        assertThat(Permutations.ofTwoWays(List.of(List.of(milkFirst, teaFirst))).orElseThrow())
                .isCloseTo(0.4857, within(0.0001));
    }

    /** A general-purpose library's hypergeometric distribution, both tails alike because the arms are of one size. */
    @Test
    void with_one_look_it_agrees_with_the_hypergeometric_distribution() {
        for (int came = 0; came <= 12; came++) {
            Arm first = new Arm("first", times(came, 12 - came));
            Arm second = new Arm("second", times(6, 6));
            HypergeometricDistribution drawn = new HypergeometricDistribution(24, came + 6, 12);
            double middle = (came + 6) / 2.0;
            double expected = 0;
            for (int k = 0; k <= 12; k++) {
                expected += Math.abs(k - middle) >= Math.abs(came - middle) - 1e-9 ? drawn.probability(k) : 0;
            }
            assertThat(Permutations.ofTwoWays(List.of(List.of(first, second))).orElseThrow())
                    .isCloseTo(expected, within(1e-9));
        }
    }

    private static List<SproutingTime> times(int came, int not) {
        List<SproutingTime> times = new java.util.ArrayList<>(Collections.nCopies(came, SproutingTime.between(6, 7)));
        times.addAll(Collections.nCopies(not, SproutingTime.notBy(7)));
        return times;
    }

    @Test
    void many_seeds_are_dealt_out_by_chance_and_agree_with_the_approximation() {
        List<List<Arm>> blocks = List.of(List.of(CosmesisData.RADIATION, CosmesisData.WITH_CHEMOTHERAPY));
        double drawn = Permutations.ofTwoWays(blocks).orElseThrow();
        assertThat(drawn)
                .isCloseTo(LogRank.ofTimesBetweenLooks(blocks).orElseThrow().p(), within(0.003));
        assertThat(Permutations.ofTwoWays(blocks)).hasValue(drawn);
    }

    @Test
    void without_a_difference_one_trial_in_twenty_shows_one() {
        Random random = new Random(17);
        int shown = 0;
        for (int trial = 0; trial < 1000; trial++) {
            List<Arm> block = List.of(LogRankTest.drawn("a", 6, 1, random), LogRankTest.drawn("b", 6, 1, random));
            shown += Permutations.ofTwoWays(List.of(block)).orElseThrow() <= 0.05 ? 1 : 0;
        }
        // an exact test never shows more than it may; ties make it show fewer
        assertThat(shown).isBetween(20, 50 + 3 * 7);
    }

    @Test
    void three_ways_are_not_for_it() {
        Random random = new Random(1);
        assertThat(Permutations.ofTwoWays(List.of(List.of(
                        LogRankTest.drawn("a", 3, 1, random),
                        LogRankTest.drawn("b", 3, 1, random),
                        LogRankTest.drawn("c", 3, 1, random)))))
                .isEmpty();
    }
}
