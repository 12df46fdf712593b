package warmshelf.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeasonYearTest {
    @ParameterizedTest
    @CsvSource({
        // In the north tender plants go out in May or June: common practice.
        "2027-06-15, north, 2028, closed as soon as all is out",
        "2027-10-03, north, 2028, closed in autumn",
        "2028-02-01, north, 2028, closed when the next one is about to begin",
        "2028-08-01, north, 2029, closed a year late: that season is past as well",
        // In the south they go out from October to December of the year in which they were sown: common practice.
        "2027-12-20, south, 2028, closed as soon as all is out",
        "2028-03-15, south, 2028, closed at the end of summer",
        "2028-08-01, south, 2028, closed when the next one has begun",
        "2029-01-10, south, 2029, closed a year late"
    })
    void the_season_after_2027_is_the_next_one_that_can_still_be_sown(
            LocalDate today, String half, int next, String when) {
        assertThat(SeasonYear.after(2027, today, half.equals("south"))).as(when).isEqualTo(next);
    }
}
