package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class StayOnBoardTest {
    private static final StayOnBoard STAY =
            DrawnCellar.stay(1, 3, 2, LocalDate.of(2027, 3, 1), LocalDate.of(2027, 3, 15));

    @Test
    void a_stay_lies_on_its_first_day_and_on_its_last() {
        assertThat(STAY.lies(LocalDate.of(2027, 3, 1))).isTrue();
        assertThat(STAY.lies(LocalDate.of(2027, 3, 14))).isTrue();
    }

    @Test
    void a_stay_is_gone_on_its_to_day_and_not_there_the_day_before_it_begins() {
        assertThat(STAY.lies(LocalDate.of(2027, 3, 15))).isFalse();
        assertThat(STAY.lies(LocalDate.of(2027, 2, 28))).isFalse();
    }

    @Test
    void the_part_of_the_place_is_said_in_words() {
        assertThat(STAY.quarterWords()).isEqualTo("right half");
        assertThat(STAY.kindWords()).isEqualTo("half tray");
    }
}
