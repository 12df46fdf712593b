package warmshelf.frost.garden;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.MonthDay;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DayOfYearTest {
    @ParameterizedTest
    @ValueSource(strings = {"24 May", "24. may", "May 24", "MAY 24", "24May", "05-24", "2027-05-24", " 24 may "})
    void a_day_is_read_in_each_usual_way(String text) {
        assertThat(DayOfYear.read(text)).contains(MonthDay.of(5, 24));
    }

    @ParameterizedTest
    @ValueSource(strings = {"29 Feb", "29 february", "02-29"})
    void the_leap_day_is_a_day(String text) {
        assertThat(DayOfYear.read(text)).contains(MonthDay.of(2, 29));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "24", "May", "24/5", "5/24", "32 May", "30 Feb", "13-01", "24 Ma", "24 Mayor", "00-10"})
    void what_is_no_day_or_may_be_two_is_not_read(String text) {
        assertThat(DayOfYear.read(text)).isEmpty();
    }
}
