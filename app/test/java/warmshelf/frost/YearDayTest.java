package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class YearDayTest {
    @ParameterizedTest
    @CsvSource({
        "2027, 1, 2027-01-01",
        "2027, 59, 2027-02-28",
        "2027, 60, 2027-03-01",
        "2027, 365, 2027-12-31",
        "2028, 59, 2028-02-28",
        "2028, 60, 2028-03-01",
        "2028, 121, 2028-05-01",
        "2028, 365, 2028-12-31",
        "2027, 0, 2026-12-31",
        "2027, -30, 2026-12-01",
        "2027, 366, 2028-01-01",
        "2027, 425, 2028-03-01",
        "2027, 133.4, 2027-05-13",
        "2027, 133.6, 2027-05-14",
        "2027, 0.4, 2026-12-31"
    })
    void a_day_number_is_the_same_day_and_month_in_every_year(int year, double day, LocalDate date) {
        assertThat(YearDay.in(year, day)).isEqualTo(date);
    }
}
