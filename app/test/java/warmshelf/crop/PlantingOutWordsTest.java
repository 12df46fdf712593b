package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlantingOutWordsTest {
    @ParameterizedTest
    @CsvSource({
        "-28, -14, from 28 days before the average last frost to 14 days before it",
        "-7, 7, from 7 days before the average last frost to 7 days after it",
        "0, 14, from the average last frost to 14 days after it",
        "-14, 0, from 14 days before the average last frost to it",
        "7, 7, 7 days after the average last frost",
        "0, 0, the average last frost"
    })
    void the_frost_is_named_once(int first, int last, String words) {
        assertThat(PlantingOutWords.of(first, last)).isEqualTo(words);
    }
}
