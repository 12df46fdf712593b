package warmshelf.finding.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.finding.season.SpaceWeek.Space;
import warmshelf.finding.season.SpaceWeek.Used;

class SpaceWeekTest {
    private static final Space MAT = new Space(new UUID(1, 1), true, 8, 24 * 100);
    private static final Space LIGHT = new Space(new UUID(2, 2), false, 4, 14 * 40);
    // a Monday
    private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

    @Test
    void weeks_between_in_which_nothing_lay_are_there_too() {
        List<SpaceWeek> weeks = SpaceWeek.of(
                List.of(MAT, LIGHT),
                List.of(
                        new Used(MAT.id(), MONDAY.plusDays(6), 4),
                        new Used(LIGHT.id(), MONDAY.plusDays(14), 2),
                        new Used(MAT.id(), MONDAY, 2)));

        assertThat(weeks)
                .containsExactly(
                        new SpaceWeek(MONDAY, 6, 56, 0, 28, 2 * 24 * 100),
                        new SpaceWeek(MONDAY.plusWeeks(1), 0, 56, 0, 28, 0),
                        new SpaceWeek(MONDAY.plusWeeks(2), 0, 56, 2, 28, 14 * 40));
    }

    @Test
    void what_lay_on_a_mat_that_is_gone_is_left_out() {
        assertThat(SpaceWeek.of(List.of(MAT), List.of(new Used(new UUID(9, 9), MONDAY, 4))))
                .isEmpty();
    }
}
