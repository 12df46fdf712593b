package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.words.Units;

/** Whole degrees, of either unit, as people type them and read them again. */
class WholeDegreesTest {
    @ParameterizedTest
    @CsvSource({"F, 32, 120", "F, -40, 31", "C, 0, 49", "C, -40, -1"})
    void a_whole_degree_typed_comes_back_as_the_same(String unit, int least, int most) {
        Units units = Units.of(unit, "cm");
        for (int degree = least; degree <= most; degree++) {
            double kept = BigDecimal.valueOf(units.celsiusOf(degree))
                    .setScale(1, RoundingMode.HALF_UP)
                    .doubleValue();

            assertThat(units.typedTemperature(kept)).as("as typed").isEqualTo(degree);
            assertThat(units.temperature(kept)).as("as shown").isEqualTo(degree + " °" + unit);
        }
    }

    // Common practice gives bottom heat for peppers as 75 to 80 °F, 24 to 27 °C; Delaware's extension 70 to 90 °F, 21
    // to 32 °C.
    @Test
    void whole_degrees_celsius_are_read_in_round_fahrenheit() {
        Units units = Units.AMERICAN;
        assertThat(units.temperatureRange(24, 27)).isEqualTo("75–80 °F");
        assertThat(units.temperatureRange(21, 32)).isEqualTo("70–90 °F");
    }

    @ParameterizedTest
    @CsvSource({"F, 32, 120", "C, 0, 49"})
    void what_is_typed_as_it_was_shown_stays_what_it_is(String unit, int least, int most) {
        Units units = Units.of(unit, "cm");
        for (int degree = least; degree <= most; degree++) {
            double stands = units.celsiusOf(degree) + 0.2;
            long shown = units.degrees(stands);

            assertThat(units.celsiusOf((int) shown, stands)).isEqualTo(stands);
            assertThat(units.celsiusOf((int) shown + 1, stands)).isEqualTo(units.celsiusOf((double) (shown + 1)));
        }
    }
}
