package warmshelf.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Son, father, grandfather, as is common practice. Weeks are those of ISO 8601, whose own worked examples (that 1 January 2027 lies in
 * week 53 of 2026, 4 January 2027 begins week 1) decide the turn of a year.
 */
class KeepRuleTest {
    private static final ZoneId DULUTH = ZoneId.of("America/Chicago");

    @ParameterizedTest(name = "daily from {0} to {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                // nothing to thin
                "2027-03-01 | 2027-03-03 | 03-01 03-02 03-03",
                // seven days; Sundays 28 February and 7 March end weeks; February's last
                "2027-02-20 | 2027-03-10 | 02-21 02-28 03-04 03-05 03-06 03-07 03-08 03-09 03-10",
                // over the turn of the year: Sunday 3 January ends week 53 of 2026, 31 December is December's last
                "2026-12-01 | 2027-01-12 | 12-27 12-31 01-03 01-06 01-07 01-08 01-09 01-10 01-11 01-12",
                // a leap day is February's last
                "2028-02-25 | 2028-04-04 | 02-29 03-19 03-26 03-29 03-30 03-31 04-01 04-02 04-03 04-04"
            })
    void daily_backups_become_days_weeks_and_months(LocalDate from, LocalDate to, String kept) {
        List<Instant> made =
                from.datesUntil(to.plusDays(1)).map(KeepRuleTest::night).toList();

        assertThat(monthDays(KeepRule.kept(made, DULUTH))).containsExactly(kept.split(" "));
    }

    @Test
    void two_years_of_nights_come_to_at_most_twenty_three_and_reach_a_year_back() {
        List<Instant> left = new ArrayList<>();
        for (LocalDate day = LocalDate.of(2026, 1, 1); day.isBefore(LocalDate.of(2028, 1, 1)); day = day.plusDays(1)) {
            left.add(night(day));
            Set<Instant> kept = KeepRule.kept(left, DULUTH);
            assertThat(kept).hasSizeLessThanOrEqualTo(KeepRule.DAYS + KeepRule.WEEKS + KeepRule.MONTHS);
            assertThat(kept).contains(night(day));
            left = new ArrayList<>(kept);
        }

        assertThat(left.get(0)).isEqualTo(night(LocalDate.of(2027, 1, 31)));
    }

    @Test
    void a_machine_that_was_off_for_two_months_keeps_what_it_had() {
        List<Instant> made = Stream.of("2027-01-10", "2027-01-11", "2027-03-20")
                .map(day -> night(LocalDate.parse(day)))
                .toList();

        assertThat(KeepRule.kept(made, DULUTH)).hasSize(3);
    }

    @Test
    void of_one_day_the_newest_is_kept_by_the_days_of_the_group() {
        Instant late = Instant.parse("2027-03-02T05:30:00Z"); // 1 March, 23:30 in Duluth
        Instant afterMidnight = Instant.parse("2027-03-02T06:30:00Z");
        Instant morning = Instant.parse("2027-03-01T15:00:00Z");

        assertThat(KeepRule.kept(List.of(morning, late, afterMidnight), DULUTH)).containsExactly(late, afterMidnight);
        assertThat(KeepRule.kept(List.of(), DULUTH)).isEmpty();
    }

    private static Instant night(LocalDate day) {
        return day.atTime(LocalTime.of(3, 0)).atZone(DULUTH).toInstant();
    }

    private static List<String> monthDays(Set<Instant> kept) {
        return kept.stream()
                .map(at -> LocalDate.ofInstant(at, DULUTH).toString().substring(5))
                .collect(Collectors.toList());
    }
}
