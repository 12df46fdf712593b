package warmshelf.frost.minima;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Test;

class TrendTest {
    @Test
    void a_steady_change_is_found_and_two_wild_years_do_not_pull_it() {
        // two days earlier every ten years, but for two years far off
        FrostSide springs = springs(60, year -> year == 10 || year == 40 ? 200 : 130 - (int) Math.round(0.2 * year));

        Trend trend = Trend.of(springs).orElseThrow();

        assertThat(trend.daysPerDecade()).isCloseTo(-2, within(0.15));
        assertThat(trend.isClear()).isTrue();
    }

    @Test
    void the_ten_percent_day_at_the_records_end_has_all_the_change_behind_it() {
        FrostSide springs = springs(60, year -> 130 - (int) Math.round(0.2 * year));

        Trend trend = Trend.of(springs).orElseThrow();

        // without any other spread every spring of the last year would end on its day, 130 - 0.2 x 59
        assertThat(trend.atItsEnd(springs).dayAt(0.1).orElseThrow()).isCloseTo(118.2, within(1.0));
        assertThat(TrendNote.of(trend, springs).words())
                .contains(
                        "2.0 days earlier each ten years",
                        "more than chance",
                        "days earlier than over the whole record");
    }

    @Test
    void chance_alone_is_called_a_clear_trend_about_once_in_twenty_records() {
        Random draws = new Random(20270301);
        int clear = 0;
        for (int trial = 0; trial < 1000; trial++) {
            FrostSide springs = springs(30, unused -> 120 + (int) Math.round(12 * draws.nextGaussian()));
            clear += Trend.of(springs).orElseThrow().isClear() ? 1 : 0;
        }

        assertThat(clear / 1000.0).isBetween(0.03, 0.07);
    }

    @Test
    void a_record_that_never_moves_has_no_trend() {
        Trend trend = Trend.of(springs(30, unused -> 120)).orElseThrow();

        assertThat(trend.daysPerDecade()).isZero();
        assertThat(trend.chance()).isEqualTo(1);
        assertThat(TrendNote.of(trend, springs(30, unused -> 120)).words()).endsWith("came neither earlier nor later.");
    }

    @Test
    void nine_seasons_are_too_few_to_tell_a_trend() {
        assertThat(Trend.of(springs(9, year -> 120 - year))).isEmpty();
    }

    private static FrostSide springs(int count, IntUnaryOperator dayOfYear) {
        List<SeasonFrost> seasons = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int year = 1951 + i;
            seasons.add(new SeasonFrost(
                    year,
                    LocalDate.of(2001, 1, 1)
                            .plusDays(dayOfYear.applyAsInt(i) - 1)
                            .withYear(year)));
        }
        return new FrostSide(true, seasons, 0);
    }
}
