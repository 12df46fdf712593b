package warmshelf.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Held against what extension services say: 7 to 10 days (Penn State Master Gardeners), about 7 (Utah State), 3 days to 2 weeks
 * (University of California, Unit 1.3); an hour or two at first, more each day, is common practice.
 */
class HardeningPlanTest {
    private static final LocalDate BEGINS = LocalDate.of(2027, 5, 10);

    @Test
    void ten_days_begin_with_two_hours_and_end_with_two_nights_outside() {
        List<HardeningPlan.Day> days = HardeningPlan.days(BEGINS, BEGINS.plusDays(10));

        assertThat(days).extracting(HardeningPlan.Day::hours).startsWith(2, 2, 3, 4, 5, 5, 6, 7);
        assertThat(days)
                .extracting(HardeningPlan.Day::overnight)
                .containsExactly(false, false, false, false, false, false, false, false, true, true);
        assertThat(days.get(9).day()).isEqualTo(LocalDate.of(2027, 5, 19));
    }

    @ParameterizedTest
    @ValueSource(ints = {7, 8, 9, 10, 12, 14})
    void no_day_is_shorter_than_the_one_before_and_none_leaps(int length) {
        List<HardeningPlan.Day> days = HardeningPlan.days(BEGINS, BEGINS.plusDays(length));

        assertThat(days).hasSize(length);
        for (int i = 1; i < length; i++) {
            assertThat(days.get(i).hours() - days.get(i - 1).hours()).isBetween(0, 2);
        }
        assertThat(days.get(length - 1).hours()).isEqualTo(8);
    }

    @ParameterizedTest
    @ValueSource(ints = {-3, 0, 2, 6})
    void what_is_planted_out_sooner_still_gets_the_least_that_all_sources_allow(int length) {
        assertThat(HardeningPlan.days(BEGINS, BEGINS.plusDays(length))).hasSize(7);
    }

    @Test
    void what_waits_long_is_not_told_to_go_out_anew_for_weeks() {
        assertThat(HardeningPlan.days(BEGINS, BEGINS.plusDays(40))).hasSize(14);
    }
}
