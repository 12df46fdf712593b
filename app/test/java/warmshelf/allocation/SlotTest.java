package warmshelf.allocation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlotTest {
    @Test
    void a_place_holds_one_tray_or_two_half_trays_or_four_bags() {
        assertThat(Slot.of(4)).containsExactly(new Slot(1, 4));
        assertThat(Slot.of(2)).containsExactly(new Slot(1, 2), new Slot(3, 2));
        assertThat(Slot.of(1)).containsExactly(new Slot(1, 1), new Slot(2, 1), new Slot(3, 1), new Slot(4, 1));
        assertThat(Slot.of(3)).isEmpty();
        assertThat(Slot.of(8)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1,4,1111", "1,2,0011", "3,2,1100", "1,1,0001", "2,1,0010", "3,1,0100", "4,1,1000"})
    void the_mask_has_one_bit_for_each_quarter_taken(int first, int quarters, String bits) {
        assertThat(new Slot(first, quarters).mask()).isEqualTo(Integer.parseInt(bits, 2));
    }

    @ParameterizedTest
    @CsvSource({"2,4", "2,2", "4,2", "0,1", "5,1", "1,3", "1,0", "1,8", "-1,1"})
    void what_would_reach_across_two_places_or_halves_is_refused(int first, int quarters) {
        assertThatThrownBy(() -> new Slot(first, quarters))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("quarters %d from quarter %d do not lie within one place", quarters, first);
    }

    @Test
    void words_say_which_part_of_the_place_it_is() {
        assertThat(new Slot(1, 4).words()).isEqualTo("the whole place");
        assertThat(new Slot(1, 2).words()).isEqualTo("left half");
        assertThat(new Slot(3, 2).words()).isEqualTo("right half");
        assertThat(new Slot(3, 1).words()).isEqualTo("quarter 3");
    }
}
