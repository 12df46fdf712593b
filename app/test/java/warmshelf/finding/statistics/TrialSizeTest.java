package warmshelf.finding.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TrialSizeTest {
    /** Schoenfeld's formula as given by Collett, Modelling Survival Data, chapter 10, from memory: 4 (1.96 + 0.84)^2 / ln^2 2 = 65.3. */
    @Test
    void a_doubled_rate_needs_66_sprouts() {
        assertThat(TrialSize.sproutsForRatio(2, 0.5)).isEqualTo(66);
        assertThat(TrialSize.sproutsForRatio(0.5, 0.5)).isEqualTo(66);
    }

    @Test
    void so_many_sprouts_do_show_a_doubled_rate_in_about_8_of_10_trials() {
        Random random = new Random(23);
        int shown = 0;
        int trials = 400;
        for (int trial = 0; trial < trials; trial++) {
            List<Arm> block = List.of(exponential("quick", 33, 1, random), exponential("slow", 33, 2, random));
            shown += LogRank.ofExactTimes(List.of(block)).orElseThrow().p() < 0.05 ? 1 : 0;
        }
        // three standard errors of a share of 0.8 among 400
        assertThat((double) shown / trials).isCloseTo(0.8, within(0.06));
    }

    private static Arm exponential(String name, int seeds, double mean, Random random) {
        List<SproutingTime> times = new ArrayList<>();
        for (int i = 0; i < seeds; i++) {
            times.add(SproutingTime.at(-mean * Math.log(1 - random.nextDouble())));
        }
        return new Arm(name, times);
    }

    @Test
    void so_long_a_delay_does_show_in_about_8_of_10_trials() {
        double ratio = TrialSize.ratioOfDaysShown(24, 0.25);
        Random random = new Random(29);
        int shown = 0;
        int trials = 400;
        for (int trial = 0; trial < trials; trial++) {
            List<Arm> block =
                    List.of(LogRankTest.drawn("quick", 24, 1, random), LogRankTest.drawn("slow", 24, ratio, random));
            shown += LogRank.ofTimesBetweenLooks(List.of(block)).orElseThrow().p() < 0.05 ? 1 : 0;
        }
        // the log-rank test loses a little against the means of logarithms, for which the formula is
        assertThat((double) shown / trials).isBetween(0.65, 0.86);
    }

    /** Cohen 1988, table 2.3.5 for 80 % at two-sided 5 %, from memory: half a standard deviation needs 64 of each by t, 63 by z. */
    @Test
    void half_a_standard_deviation_needs_63_of_each() {
        assertThat(TrialSize.sproutsForRatioOfDays(Math.exp(0.5 * 0.3), 0.3)).isEqualTo(63);
    }

    @Test
    void as_many_as_are_needed_do_show_the_ratio() {
        int sprouts = TrialSize.sproutsForRatioOfDays(1.2, 0.22);
        assertThat(TrialSize.ratioOfDaysShown(sprouts, 0.22)).isLessThanOrEqualTo(1.2);
        assertThat(TrialSize.ratioOfDaysShown(sprouts - 1, 0.22)).isGreaterThan(1.2);
    }

    /** Cohen 1988, table 6.3.5 for 80 % at two-sided 5 %, from memory: an effect of 0.50 needs 63 of each. */
    @Test
    void cohens_medium_effect_needs_63_of_each() {
        double second = Math.pow(Math.sin((2 * Math.asin(Math.sqrt(0.8)) - 0.5) / 2), 2);
        assertThat(TrialSize.seedsForShares(0.8, second)).isEqualTo(63);
        assertThat(TrialSize.lowerShareShown(0.8, 63)).isCloseTo(second, within(0.002));
    }

    @Test
    void a_handful_of_seeds_shows_no_share_at_all() {
        assertThat(TrialSize.lowerShareShown(0.5, 2)).isZero();
    }
}
