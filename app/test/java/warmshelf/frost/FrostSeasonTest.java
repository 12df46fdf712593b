package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FrostSeasonTest {
    private static final FrostSeason EVERY_YEAR = season(1.0);

    /** Against the normal distribution of another library (commons-math3). */
    @ParameterizedTest
    @ValueSource(doubles = {0.9, 0.5, 0.3, 0.1, 0.02})
    void days_at_a_risk_are_normal_quantiles(double risk) {
        NormalDistribution other = new NormalDistribution(140, 13);

        assertThat(EVERY_YEAR.dayExceededWith(risk).orElseThrow())
                .isCloseTo(other.inverseCumulativeProbability(1 - risk), within(1e-6));
        assertThat(EVERY_YEAR.dayReachedWith(risk).orElseThrow())
                .isCloseTo(other.inverseCumulativeProbability(risk), within(1e-6));
    }

    @Test
    void the_three_parts_of_the_spread_add_as_squares() {
        // 3, 4 and 12 make 13
        assertThat(EVERY_YEAR.sdDays()).isCloseTo(13, within(1e-12));
    }

    /** P(last freeze after d) = q x P(D > d | freeze), the mixed distribution of the older national tables. */
    @ParameterizedTest
    @CsvSource({"0.8,0.4,0.5", "0.5,0.1,0.2", "0.2,0.1,0.5"})
    void years_without_frost_lower_the_chance_in_proportion(double anyFrost, double risk, double riskGivenFrost) {
        FrostSeason rare = season(anyFrost);

        assertThat(rare.dayExceededWith(risk).orElseThrow())
                .isCloseTo(EVERY_YEAR.dayExceededWith(riskGivenFrost).orElseThrow(), within(1e-9));
        assertThat(rare.dayReachedWith(risk).orElseThrow())
                .isCloseTo(EVERY_YEAR.dayReachedWith(riskGivenFrost).orElseThrow(), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.1})
    void there_is_no_day_at_a_risk_that_fewer_seasons_than_that_reach(double anyFrost) {
        assertThat(season(anyFrost).dayExceededWith(0.1)).isEmpty();
        assertThat(season(anyFrost).dayReachedWith(0.1)).isEmpty();
    }

    @Test
    void a_smaller_risk_never_gives_an_earlier_day_in_spring_nor_a_later_one_in_autumn() {
        FrostSeason rare = season(0.7);
        for (double risk = 0.01; risk < 0.68; risk += 0.01) {
            assertThat(rare.dayExceededWith(risk).orElseThrow())
                    .isGreaterThanOrEqualTo(rare.dayExceededWith(risk + 0.01).orElseThrow());
            assertThat(rare.dayReachedWith(risk).orElseThrow())
                    .isLessThanOrEqualTo(rare.dayReachedWith(risk + 0.01).orElseThrow());
        }
    }

    @Test
    void the_chance_on_a_day_is_the_inverse_of_the_day_at_a_chance() {
        FrostSeason rare = season(0.7);

        assertThat(rare.chanceAfter(rare.dayExceededWith(0.3).orElseThrow())).isCloseTo(0.3, within(1e-9));
        assertThat(rare.chanceBefore(rare.dayReachedWith(0.3).orElseThrow())).isCloseTo(0.3, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 1.1, Double.NaN})
    void a_risk_that_is_none_is_refused(double risk) {
        assertThatThrownBy(() -> EVERY_YEAR.dayExceededWith(risk)).hasMessageContaining("between 0 and 1");
    }

    private static FrostSeason season(double anyFrost) {
        return new FrostSeason(anyFrost, 140, 0, 3, 12, 4, 3);
    }
}
