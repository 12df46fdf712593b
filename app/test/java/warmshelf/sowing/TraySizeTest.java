package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TraySizeTest {
    // The nominal flat is 10 by 20 inches inside; real ones measure up to 533 by 277 mm outside (containers.csv).
    @ParameterizedTest
    @CsvSource({
        "533, 277, TRAY",
        "545, 280, ''",
        "508, 254, TRAY",
        "277, 266, HALF_TRAY",
        "266, 277, HALF_TRAY",
        "254, 254, HALF_TRAY",
        "290, 200, TRAY",
        "543, 287, TRAY",
        "544, 277, ''",
        "533, 288, ''",
        "600, 400, ''",
        "400, 600, ''",
        "277, 533, TRAY",
        "10, 10, HALF_TRAY"
    })
    void a_tray_takes_the_smallest_room_it_fits_into(int oneSide, int otherSide, String container) {
        assertThat(new TraySize(oneSide, otherSide).fits().map(Container::name).orElse(""))
                .isEqualTo(container);
    }

    @Test
    void it_does_not_matter_which_side_is_named_first() {
        assertThat(new TraySize(277, 533)).isEqualTo(new TraySize(533, 277));
    }

    @Test
    void a_side_of_nothing_is_refused() {
        assertThatThrownBy(() -> new TraySize(533, 0)).hasMessage("a tray's sides must be at least 1 mm, was 0");
    }
}
