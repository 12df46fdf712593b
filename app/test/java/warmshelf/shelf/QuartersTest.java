package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuartersTest {
    private static final Box PLACE = new Box(100, 50, 80, 40);

    @Test
    void a_tray_covers_the_whole_place() {
        assertThat(new Quarters(1, 4).within(PLACE)).isEqualTo(PLACE);
    }

    @Test
    void a_half_tray_on_quarter_1_lies_on_the_left_half() {
        assertThat(new Quarters(1, 2).within(PLACE)).isEqualTo(new Box(100, 50, 40, 40));
    }

    @Test
    void a_half_tray_on_quarter_3_lies_on_the_right_half() {
        assertThat(new Quarters(3, 2).within(PLACE)).isEqualTo(new Box(140, 50, 40, 40));
    }

    @ParameterizedTest
    @CsvSource({"1,100,50", "2,100,70", "3,140,50", "4,140,70"})
    void each_bag_has_its_own_quarter(int quarter, int x, int y) {
        assertThat(new Quarters(quarter, 1).within(PLACE)).isEqualTo(new Box(x, y, 40, 20));
    }

    @Test
    void an_empty_place_is_free_as_a_whole() {
        assertThat(Quarters.free(List.of())).containsExactly(new Quarters(1, 4));
    }

    @Test
    void a_full_place_has_nothing_free() {
        assertThat(Quarters.free(List.of(new Quarters(1, 4)))).isEmpty();
    }

    @Test
    void beside_a_half_tray_the_other_half_is_free() {
        assertThat(Quarters.free(List.of(new Quarters(1, 2)))).containsExactly(new Quarters(3, 2));
    }

    @Test
    void beside_a_bag_a_quarter_and_a_half_are_free() {
        assertThat(Quarters.free(List.of(new Quarters(3, 1)))).containsExactly(new Quarters(1, 2), new Quarters(4, 1));
    }

    @Test
    void two_free_quarters_in_different_halves_are_no_half() {
        assertThat(Quarters.free(List.of(new Quarters(1, 1), new Quarters(4, 1))))
                .containsExactly(new Quarters(2, 1), new Quarters(3, 1));
    }
}
