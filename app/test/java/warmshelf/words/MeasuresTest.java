package warmshelf.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths and ranges as people say them. */
class MeasuresTest {
    // An inch is 25.4 mm; packets give depths in eighths at the finest.
    @ParameterizedTest
    @CsvSource({
        "1, under ⅛ in",
        "2, ⅛ in",
        "3, ⅛ in",
        "4.7, ⅛ in",
        "5, ¼ in",
        "6, ¼ in",
        "13, ½ in",
        "38, 1½ in",
        "51, 2 in",
        "290, 11.5 in"
    })
    void no_inch_is_finer_than_an_eighth(double millimetres, String words) {
        assertThat(Units.AMERICAN.length(millimetres)).isEqualTo(words);
    }

    @Test
    void nothing_is_no_length_at_all() {
        assertThat(Units.AMERICAN.length(0)).isEqualTo("0 in");
    }

    @Test
    void a_range_whose_ends_read_the_same_is_one_temperature() {
        assertThat(Units.AMERICAN.temperatureRange(20, 20)).isEqualTo("68 °F");
        assertThat(Units.METRIC.temperatureRange(19.6, 20.4)).isEqualTo("20 °C");
        assertThat(Units.METRIC.temperatureRange(24, 30)).isEqualTo("24–30 °C");
    }
}
