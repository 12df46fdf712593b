package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;

class BoardLookTest {
    private static final OffsetDateTime NINE = OffsetDateTime.parse("2027-03-01T09:00:00Z");

    @Test
    void at_the_first_look_all_is_seen() {
        assertThat(BoardLook.first(NINE)).isEqualTo(new BoardLook(NINE, NINE));
    }

    @Test
    void during_one_visit_the_same_stays_marked_from_board_to_board() {
        BoardLook look = new BoardLook(NINE.minusDays(2), NINE);

        assertThat(look.at(NINE.plusMinutes(9))).isEqualTo(look);
    }

    @Test
    void the_next_visit_marks_what_came_after_the_one_before_began() {
        BoardLook look = new BoardLook(NINE.minusDays(2), NINE);

        assertThat(look.at(NINE.plusMinutes(10))).isEqualTo(new BoardLook(NINE, NINE.plusMinutes(10)));
        assertThat(look.at(NINE.plusDays(3))).isEqualTo(new BoardLook(NINE, NINE.plusDays(3)));
    }

    @Test
    void a_mark_is_a_sign_and_words_beside_it() {
        StayMark mark = new StayMark(true, StayMark.Change.MOVED);

        assertThat(mark.signs()).isEqualTo("◆ ! ");
        assertThat(mark.words())
                .isEqualTo(", moved since you last looked, something is to do at it today besides looking");
        assertThat(StayMark.NONE.signs() + StayMark.NONE.words()).isEmpty();
    }
}
