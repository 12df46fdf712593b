package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountTest {
    @ParameterizedTest
    @CsvSource({
        "4,6,in,'',4–6 in",
        "10,15,cm,'',10–15 cm",
        "2.5,5,cm,'',2.5–5 cm",
        "0.125,0.25,in,'',⅛–¼ in",
        "3,6,mm,'',0.3–0.6 cm",
        "25.6,25.6,C,'',26 °C",
        "70,70,F,or-more,70 °F or more",
        "2.8,2.8,C,up-to,up to 3 °C",
        "7,7,days,about,about 7 days",
        "3,3,mm,more-than,more than 0.3 cm",
        "36,48,hours,'',36–48 hours",
        "0.3,1.5,%H2O2,'',0.3–1.5 % peroxide"
    })
    void the_columns_of_the_table_read_as_a_gardener_says_it(
            String low, String high, String unit, String bound, String words) {
        assertThat(Amount.of(low, high, unit, bound).orElseThrow().words()).isEqualTo(words);
    }

    @Test
    void words_are_no_figure() {
        assertThat(Amount.of("", "", "", "")).isEmpty();
        assertThatThrownBy(() -> Articles.figures(Articles.US).amount("pre-sprouted", "when to move"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("when to move");
    }
}
