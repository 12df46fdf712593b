package warmshelf.finding.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LogRankTest {
    /**
     * Chi-square 16.8 with 1 degree of freedom, p = 4.17e-05: output of R's survdiff at
     * https://rstudio-pubs-static.s3.amazonaws.com/79128_036da04b5d9e4a20b30803e3f08363fe.html
     */
    @Test
    void the_6_mp_trial_has_the_published_chi_square() {
        TestOutcome outcome = LogRank.ofExactTimes(List.of(List.of(LeukaemiaData.TREATED, LeukaemiaData.PLACEBO)))
                .orElseThrow();
        assertThat(outcome.chiSquare()).isCloseTo(16.79294, within(1e-5));
        assertThat(outcome.df()).isEqualTo(1);
        assertThat(outcome.p()).isCloseTo(4.17e-5, within(0.005e-5));
    }

    /** Fay and Shaw 2010, J. Stat. Softw. 36(2), section 4, from memory: Z = -2.6684, p = 0.007622. */
    @Test
    void times_between_looks_give_the_published_permutation_test() {
        TestOutcome outcome = LogRank.ofTimesBetweenLooks(
                        List.of(List.of(CosmesisData.RADIATION, CosmesisData.WITH_CHEMOTHERAPY)))
                .orElseThrow();
        assertThat(Math.sqrt(outcome.chiSquare())).isCloseTo(2.6684, within(0.0001));
        assertThat(outcome.p()).isCloseTo(0.007622, within(0.000001));
    }

    @Test
    void the_same_seeds_under_two_names_do_not_differ() {
        Arm other = new Arm("other", LeukaemiaData.TREATED.times());
        assertThat(LogRank.ofExactTimes(List.of(List.of(LeukaemiaData.TREATED, other))))
                .get()
                .satisfies(outcome -> assertThat(outcome.p()).isCloseTo(1, within(1e-9)));
        assertThat(Permutations.ofTwoWays(List.of(List.of(LeukaemiaData.TREATED, other))))
                .hasValue(1);
    }

    @Test
    void one_way_or_nothing_that_sprouted_cannot_be_tested() {
        Arm none = new Arm("none", List.of(SproutingTime.notBy(9), SproutingTime.notBy(9)));
        Arm neither = new Arm("neither", List.of(SproutingTime.notBy(9)));
        assertThat(LogRank.ofExactTimes(List.of(List.of(LeukaemiaData.TREATED))))
                .isEmpty();
        assertThat(LogRank.ofTimesBetweenLooks(List.of(List.of(none, neither)))).isEmpty();
    }

    /** Three arms of alike seed: the statistic has two degrees of freedom, and so its mean is two. */
    @Test
    void three_ways_have_two_degrees_of_freedom() {
        Random random = new Random(11);
        double sum = 0;
        int trials = 400;
        for (int trial = 0; trial < trials; trial++) {
            List<Arm> block = List.of(drawn("a", 20, 1, random), drawn("b", 25, 1, random), drawn("c", 30, 1, random));
            sum += LogRank.ofTimesBetweenLooks(List.of(block)).orElseThrow().chiSquare();
        }
        // four standard errors of a chi-square's mean: 4 * sqrt(4 / 400)
        assertThat(sum / trials).isCloseTo(2, within(0.4));
    }

    /** Two members whose cellars differ by a week: seen together the ways look alike, within each cellar they do not. */
    @Test
    void blocks_are_compared_within_themselves() {
        Random random = new Random(3);
        List<Arm> warm = List.of(drawn("bag", 10, 0.8, random), drawn("cells", 30, 1.1, random));
        List<Arm> cold = List.of(drawn("bag", 30, 1.5, random), drawn("cells", 10, 2.1, random));
        double together = LogRank.ofTimesBetweenLooks(
                        List.of(List.of(both(warm.get(0), cold.get(0)), both(warm.get(1), cold.get(1)))))
                .orElseThrow()
                .p();
        double blocked =
                LogRank.ofTimesBetweenLooks(List.of(warm, cold)).orElseThrow().p();
        assertThat(blocked).isLessThan(0.001);
        assertThat(together).isGreaterThan(0.05);
    }

    private static Arm both(Arm first, Arm second) {
        List<SproutingTime> times = new ArrayList<>(first.times());
        times.addAll(second.times());
        return new Arm(first.name(), times);
    }

    /** Seeds with log-normal days around ten times the factor, looked at daily until day 40. */
    static Arm drawn(String name, int seeds, double factor, Random random) {
        List<SproutingTime> times = new ArrayList<>();
        for (int i = 0; i < seeds; i++) {
            double day = 10 * factor * Math.exp(0.25 * random.nextGaussian());
            times.add(SproutingTime.between(Math.floor(day), Math.floor(day) + 1));
        }
        return new Arm(name, times);
    }
}
