package warmshelf.frost.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MonthlyFrostTest {
    /** Duluth's like: a cold winter, a mild summer. */
    private static final double[] COLD = {-17, -15, -8, -1, 4, 9, 13, 12, 8, 2, -6, -14};

    @Test
    void the_curves_monthly_means_are_those_given() {
        DailyCurve curve = new DailyCurve(COLD);
        int[] lengths = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

        int day = 0;
        for (int month = 0; month < 12; month++) {
            double sum = 0;
            for (int i = 0; i < lengths[month]; i++) {
                sum += curve.on(day++);
            }
            assertThat(sum / lengths[month]).as("month " + (month + 1)).isCloseTo(COLD[month], within(0.6));
        }
    }

    @Test
    void the_chance_of_no_frost_is_that_of_many_simulated_runs_of_nights() {
        // an independent way: nights drawn one by one with the same persistence
        Random random = new Random(20270301);
        double[] threshold = new double[40];
        Arrays.setAll(threshold, night -> -3 + night * 0.08);
        int[] free = new int[threshold.length];
        int runs = 100_000;
        for (int run = 0; run < runs; run++) {
            double stray = random.nextGaussian();
            for (int night = 0; night < threshold.length && stray > threshold[night]; night++) {
                free[night]++;
                stray = NightSpread.PERSISTENCE * stray
                        + Math.sqrt(1 - NightSpread.PERSISTENCE * NightSpread.PERSISTENCE) * random.nextGaussian();
            }
        }

        double[] chances = FrostFreeChance.of(threshold.length, night -> threshold[night]);

        for (int night = 0; night < threshold.length; night++) {
            assertThat(chances[night]).as("night " + night).isCloseTo((double) free[night] / runs, within(0.015));
        }
    }

    @Test
    void a_smaller_risk_is_a_later_day_in_spring_and_an_earlier_one_in_autumn() {
        MonthlyFrost frost = MonthlyFrost.of(COLD, false);

        assertThat(frost.lastSpringFrost(0.1).orElseThrow())
                .isGreaterThan(frost.lastSpringFrost(0.3).orElseThrow());
        assertThat(frost.lastSpringFrost(0.3).orElseThrow())
                .isGreaterThan(frost.lastSpringFrost(0.5).orElseThrow());
        assertThat(frost.firstAutumnFrost(0.1).orElseThrow())
                .isLessThan(frost.firstAutumnFrost(0.5).orElseThrow());
        assertThat(frost.anySpringFrost()).isCloseTo(1, within(1e-6));
        assertThat(frost.springSd().orElseThrow()).isBetween(6.0, 18.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 2, 4, 8, 12})
    void warmer_minima_never_give_a_later_spring_frost_or_an_earlier_autumn_one(double warmer) {
        double[] warm = Arrays.stream(COLD).map(celsius -> celsius + warmer).toArray();

        MonthlyFrost cold = MonthlyFrost.of(COLD, false);
        MonthlyFrost mild = MonthlyFrost.of(warm, false);

        for (double risk : new double[] {0.1, 0.3, 0.5}) {
            assertThat(mild.lastSpringFrost(risk).orElse(-999))
                    .isLessThanOrEqualTo(cold.lastSpringFrost(risk).orElseThrow());
            assertThat(mild.firstAutumnFrost(risk).orElse(999))
                    .isGreaterThanOrEqualTo(cold.firstAutumnFrost(risk).orElseThrow());
        }
    }

    @Test
    void south_of_the_equator_the_same_year_half_a_year_later_gives_the_same_dates_half_a_year_later() {
        double[] south = new double[12];
        Arrays.setAll(south, month -> COLD[(month + 6) % 12]);

        MonthlyFrost northern = MonthlyFrost.of(COLD, false);
        MonthlyFrost southern = MonthlyFrost.of(south, true);

        assertThat(southern.lastSpringFrost(0.1).orElseThrow())
                .isCloseTo(northern.lastSpringFrost(0.1).orElseThrow() + 181, within(1e-9));
        assertThat(southern.firstAutumnFrost(0.1).orElseThrow())
                .isCloseTo(northern.firstAutumnFrost(0.1).orElseThrow() + 181, within(1e-9));
    }

    @Test
    void a_warm_place_has_no_frost_to_date() {
        double[] warm = {18, 18, 19, 20, 22, 24, 24, 24, 23, 22, 20, 19};

        MonthlyFrost frost = MonthlyFrost.of(warm, false);

        assertThat(frost.anySpringFrost()).isLessThan(0.001);
        assertThat(frost.lastSpringFrost(0.1)).isEmpty();
        assertThat(frost.springSd()).isEmpty();
    }

    @Test
    void a_place_with_frost_in_every_month_has_its_dates_at_midsummer() {
        double[] arctic = {-30, -30, -25, -18, -8, -3, -2, -3, -8, -16, -24, -28};

        MonthlyFrost frost = MonthlyFrost.of(arctic, false);

        assertThat(frost.lastSpringFrost(0.1).orElseThrow()).isBetween(209.0, 213.0);
        assertThat(frost.firstAutumnFrost(0.1).orElseThrow()).isBetween(212.0, 216.0);
    }

    @Test
    void a_year_without_seasons_is_answered_too() {
        double[] even = new double[12];
        Arrays.fill(even, 4);

        assertThat(MonthlyFrost.of(even, false).anySpringFrost()).isBetween(0.0, 1.0);
    }
}
