package warmshelf.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;

class DayWordsTest {
    // ISO 8601:2004, 4.1.4: 12 April 1985 is 1985-W15-5, the fifth day of its week
    private static final LocalDate FRIDAY = LocalDate.of(1985, 4, 12);

    @Test
    void each_way_of_writing_a_day_has_a_name() {
        assertThat(DayWords.day(FRIDAY)).isEqualTo("Fri 12 Apr");
        assertThat(DayWords.date(FRIDAY)).isEqualTo("12 Apr");
        assertThat(DayWords.weekday(FRIDAY)).isEqualTo("Fri 12");
        assertThat(DayWords.dateAndYear(FRIDAY)).isEqualTo("12 Apr 1985");
        assertThat(DayWords.dayOfMonth(FRIDAY)).isEqualTo("12 April");
        assertThat(DayWords.dayOfMonth(MonthDay.of(4, 12))).isEqualTo("12 April");
        assertThat(DayWords.inFull(FRIDAY)).isEqualTo("12 April 1985");
        assertThat(DayWords.withWeekdayInFull(FRIDAY)).isEqualTo("Friday, 12 April 1985");
    }
}
