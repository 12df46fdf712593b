package warmshelf.finding.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class GerminationSpeedTest {
    /** https://pgomba.github.io/seedTools/articles/coolbear_use.html : T50 = 8.6875 (by N/2, whatever the page calls it). */
    @Test
    void half_of_25_seeds_came_by_the_published_day() {
        List<SproutingTime> times = daily(0, 0, 0, 0, 1, 2, 3, 1, 8, 1, 7, 2);
        assertThat(GerminationSpeed.of(times).t50().orElseThrow()).isCloseTo(8.6875, within(1e-12));
        assertThat(GerminationCurve.of(times).halfOfThoseThatCame().orElseThrow())
                .isCloseTo(8.6875, within(1e-6));
    }

    /**
     * Counts of https://www.rdocumentation.org/packages/germinationmetrics/versions/0.1.8/topics/t50 ; its formulas worked out by hand:
     * 5 + 16.5/17, 5 + 16/17, 268/40.
     */
    @Test
    void forty_seeds_have_the_figures_of_the_formulas() {
        GerminationSpeed speed = GerminationSpeed.of(daily(0, 0, 0, 0, 4, 17, 10, 7, 1, 0, 1, 0, 0, 0));
        assertThat(speed.t50Coolbear().orElseThrow()).isCloseTo(5.970588, within(1e-6));
        assertThat(speed.t50().orElseThrow()).isCloseTo(5.941176, within(1e-6));
        assertThat(speed.meanTime().orElseThrow()).isCloseTo(6.7, within(1e-12));
    }

    /** The counts of https://rdrr.io/cran/SeedCalc/man/T50.html , where half had come exactly at a count: day 5. */
    @Test
    void half_exactly_at_a_count_is_that_day() {
        assertThat(GerminationSpeed.of(daily(0, 2, 2, 11, 10, 13, 7, 5)).t50().orElseThrow())
                .isCloseTo(5, within(1e-12));
    }

    @Test
    void two_days_of_equal_counts_are_half_a_day_from_their_mean() {
        GerminationSpeed speed = GerminationSpeed.of(daily(0, 0, 2, 2));
        assertThat(speed.spread().orElseThrow()).isCloseTo(Math.sqrt(1.0 / 3), within(1e-12));
    }

    @Test
    void what_never_sprouted_has_no_speed() {
        GerminationSpeed speed = GerminationSpeed.of(List.of(SproutingTime.notBy(9)));
        assertThat(speed.t50()).isEmpty();
        assertThat(speed.meanTime()).isEmpty();
        assertThat(speed.spread()).isEmpty();
    }

    /** New seedlings on each day from the first. */
    private static List<SproutingTime> daily(int... counts) {
        List<SproutingTime> times = new ArrayList<>();
        for (int day = 1; day <= counts.length; day++) {
            for (int seed = 0; seed < counts[day - 1]; seed++) {
                times.add(SproutingTime.between(day - 1, day));
            }
        }
        return times;
    }
}
