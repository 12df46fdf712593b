package warmshelf.frost.garden;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import warmshelf.words.Units;

class DoubtfulNightTest {
    private static final LocalDate DAY = LocalDate.of(2027, 5, 1);
    private static final List<Night> NOTED = List.of(night(-1, 4), night(-21, 3), night(21, 5), night(-22, -9));

    @Test
    void ten_degrees_colder_than_any_night_around_is_not_doubtful_and_a_tenth_more_is() {
        assertThat(DoubtfulNight.why(DAY, -7, NOTED)).isEmpty();
        assertThat(DoubtfulNight.why(DAY, -7.1, NOTED))
                .map(why -> why.words(Units.METRIC))
                .contains("-7.1 °C is more than 10 °C colder than any other night noted within three weeks"
                        + " (the coldest was 3.0 °C)");
    }

    @Test
    void fewer_than_three_nights_around_tell_nothing_and_the_day_itself_does_not_count() {
        List<Night> few = List.of(night(0, 4), night(1, 4), night(2, 4));

        assertThat(DoubtfulNight.why(DAY, -30, few)).isEmpty();
        assertThat(DoubtfulNight.why(DAY, -30, List.of())).isEmpty();
    }

    @Test
    void above_twenty_five_degrees_is_doubtful() {
        assertThat(DoubtfulNight.why(DAY, 25, List.of())).isEmpty();
        assertThat(DoubtfulNight.why(DAY, 25.1, List.of()))
                .map(why -> why.words(Units.METRIC))
                .contains("25.1 °C is warm for the lowest of a night");
    }

    private static Night night(int daysLater, double celsius) {
        return new Night(DAY.plusDays(daysLater), celsius, "Tom");
    }
}
