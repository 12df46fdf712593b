package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.special.Beta;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LateSeedTest {
    private static final GerminationShare.Uncertain GOOD = new GerminationShare.Uncertain(17, 3);
    private static final GerminationShare.Uncertain POOR = new GerminationShare.Uncertain(2, 6);

    /** With one seed and none shown, Bayes' rule by hand: g (1 - F) / (1 - g F), averaged; for a share all but known it is that. */
    @Test
    void for_one_seed_of_a_known_share_it_is_bayes_rule_by_hand() {
        GerminationShare.Uncertain known = new GerminationShare.Uncertain(80_000, 20_000);

        assertThat(LateSeed.chanceOfMore(known, 1, 0, 0.5)).isCloseTo(0.8 * 0.5 / (1 - 0.8 * 0.5), within(1e-4));
        assertThat(LateSeed.chanceOfMore(known, 1, 0, 0.95)).isCloseTo(0.8 * 0.05 / (1 - 0.8 * 0.95), within(1e-4));
    }

    /** Before any could have shown, it is the chance that at least one of the seeds is good: a ratio of beta functions. */
    @ParameterizedTest
    @CsvSource({"1", "5", "12", "40", "3000"})
    void before_any_could_have_shown_it_is_the_chance_that_one_is_good(int seeds) {
        double allBad = Math.exp(Beta.logBeta(POOR.a(), POOR.b() + seeds) - Beta.logBeta(POOR.a(), POOR.b()));

        assertThat(LateSeed.chanceOfMore(POOR, seeds, 0, 0)).isCloseTo(1 - allBad, within(1e-9));
    }

    /** A second way: seeds drawn one by one many times over (Monte Carlo), keeping the draws that agree with what was seen. */
    @ParameterizedTest
    @CsvSource({"12, 5, 0.6", "12, 8, 0.95", "12, 9, 0.8", "6, 5, 0.99", "20, 9, 0.5"})
    void it_agrees_with_seeds_drawn_one_by_one(int sown, int shown, double byNow) {
        java.util.Random random = new java.util.Random(7);
        org.apache.commons.math3.distribution.BetaDistribution belief =
                new org.apache.commons.math3.distribution.BetaDistribution(
                        new org.apache.commons.math3.random.JDKRandomGenerator(3), GOOD.a(), GOOD.b());
        // Likelier shares of good seed are not favoured by hand: only draws with just that many shown are kept.
        int kept = 0;
        int more = 0;
        for (int draw = 0; draw < 3_000_000 && kept < 6_000; draw++) {
            double good = belief.sample();
            int soFar = 0;
            int late = 0;
            for (int seed = 0; seed < sown; seed++) {
                if (random.nextDouble() < good) {
                    if (random.nextDouble() < byNow) {
                        soFar++;
                    } else {
                        late++;
                    }
                }
            }
            if (soFar == shown) {
                kept++;
                more += late > 0 ? 1 : 0;
            }
        }
        assertThat(kept).as("draws that agree").isGreaterThan(500);
        assertThat(LateSeed.chanceOfMore(GOOD, sown, shown, byNow))
                .isCloseTo((double) more / kept, within(4 * Math.sqrt(0.25 / kept)));
    }

    /** Summed elsewhere over 400,000 even slices of the share itself, in plain Python. */
    @ParameterizedTest
    @CsvSource({
        "17, 3, 12, 0, 0.95, 0.5231497611",
        "8, 2, 12, 0, 0.95, 0.3143730271",
        "17, 3, 12, 5, 0.9, 0.8188161757",
        "2, 6, 12, 0, 0.95, 0.0692448802",
        "30, 10, 12, 0, 0.95, 0.5744813404"
    })
    void where_nothing_or_little_has_shown_it_is_as_exact(
            double a, double b, int sown, int shown, double byNow, double chance) {
        assertThat(LateSeed.chanceOfMore(new GerminationShare.Uncertain(a, b), sown, shown, byNow))
                .isCloseTo(chance, within(1e-8));
    }

    @Test
    void it_falls_day_by_day_and_is_nothing_when_all_good_seed_has_shown() {
        double before = 1;
        for (double byNow = 0; byNow <= 1; byNow += 0.05) {
            double now = LateSeed.chanceOfMore(GOOD, 12, 4, Math.min(1, byNow));
            assertThat(now).isLessThanOrEqualTo(before);
            before = now;
        }
        assertThat(LateSeed.chanceOfMore(GOOD, 12, 4, 1)).isCloseTo(0, within(1e-12));
        assertThat(LateSeed.chanceOfMore(GOOD, 12, 12, 0.5)).isZero();
    }

    @Test
    void figures_that_cannot_be_are_refused() {
        assertThatThrownBy(() -> LateSeed.chanceOfMore(GOOD, 10, 11, 0.5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LateSeed.chanceOfMore(GOOD, 10, 1, 1.5)).isInstanceOf(IllegalArgumentException.class);
    }
}
