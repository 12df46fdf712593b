package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WarmScaleTest {
    @ParameterizedTest
    @CsvSource({
        "17,cool",
        "21.4,cool",
        "21.7,warm",
        "25.6,hot",
        "29.4,hot",
        "18,cool",
        "21,cool",
        "22,warm",
        "25,warm",
        "26,hot",
        "29,hot",
        "30,very hot",
        "38,very hot"
    })
    void every_set_point_has_one_word(double celsius, String word) {
        assertThat(WarmScale.of(celsius).word()).isEqualTo(word);
    }
}
