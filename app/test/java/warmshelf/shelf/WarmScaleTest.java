package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.words.Units;

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

    @ParameterizedTest
    @CsvSource({"F,65,85", "C,18,29"})
    void every_whole_degree_is_in_the_key_once_and_under_the_name_it_gets(String unit, int lowest, int highest) {
        Units units = Units.of(unit, "in");
        for (int each = lowest; each <= highest; each++) {
            int degree = each;

            assertThat(Arrays.stream(WarmScale.values())
                            .filter(step -> step.first(units) <= degree && degree <= step.last(units)))
                    .as("%d °%s", degree, unit)
                    .containsExactly(WarmScale.of(units.celsiusOf((double) degree)));
        }
    }

    @Test
    void the_key_reads_in_a_readers_unit() {
        assertThat(Arrays.stream(WarmScale.values()).map(step -> step.range(Units.of("F", "in"))))
                .containsExactly("65 to 70 °F", "71 to 77 °F", "78 to 85 °F", "86 °F and above");
        assertThat(Arrays.stream(WarmScale.values()).map(step -> step.range(Units.METRIC)))
                .containsExactly("18 to 21 °C", "22 to 25 °C", "26 to 29 °C", "30 °C and above");
    }
}
