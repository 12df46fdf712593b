package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.sowing.Problem;

class CellTextTest {
    @ParameterizedTest
    @ValueSource(strings = {"n", "N", "nothing", "ok", "x", "-", "–", "✓"})
    void a_tick_in_any_hand_says_that_nothing_was_new(String typed) {
        assertThat(CellText.read(typed)).contains(new CellText("", true, false, null));
    }

    @ParameterizedTest
    @CsvSource({
        "5, 5,",
        "5 dry, 5, DRY",
        "dry 5, 5, DRY",
        "'5, mould', 5, MOULD",
        "DAMP, '', DAMPING_OFF",
        "p, '', OTHER"
    })
    void a_count_and_a_problem_stand_alone_or_together(String typed, String count, Problem problem) {
        assertThat(CellText.read(typed)).contains(new CellText(count, false, false, problem));
    }

    @ParameterizedTest
    @EnumSource(Problem.class)
    void every_problem_can_be_typed_by_its_word(Problem problem) {
        assertThat(CellText.read(problem.word())).contains(new CellText("", false, false, problem));
    }

    @Test
    void done_may_come_with_a_count() {
        assertThat(CellText.read("d 12")).contains(new CellText("12", false, true, null));
    }

    @ParameterizedTest
    @ValueSource(strings = {"5 6", "-3", "5.5", "to", "too", "n 5", "n d", "dry wet", "hello", "1234567", "<b>", "é"})
    void what_can_mean_two_things_or_none_is_not_guessed_at(String typed) {
        assertThat(CellText.read(typed)).isEmpty();
    }
}
