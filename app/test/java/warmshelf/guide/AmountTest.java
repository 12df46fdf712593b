package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountTest {
    @ParameterizedTest
    @CsvSource({
        "4-6,in,4–6 in",
        "10-15 cm,'',10–15 cm",
        "2.5-5 cm,'',2.5–5 cm",
        "1/8-1/4,in,0.125–0.25 in",
        "3-6 mm,'',0.3–0.6 cm",
        "25.6 C,'',26 °C",
        "70 or more,F,70 °F or more",
        "21 C or more,'',21 °C or more",
        "up to 2.8 C,'',up to 3 °C",
        "about 7,days,about 7 days",
        "more than 3,mm,more than 0.3 cm",
        "36-48,hours,36–48 hours",
        "0.3-1.5,% H2O2,0.3–1.5 % peroxide"
    })
    void a_printed_value_reads_as_a_gardener_says_it(String value, String unit, String words) {
        assertThat(Amount.printed(value, unit).words()).isEqualTo(words);
    }

    @Test
    void words_are_no_figure() {
        assertThatThrownBy(() -> Amount.printed("as the root just shows", ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("as the root just shows");
    }
}
