package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole degrees, of either unit, as people type them and read them again. */
class WholeDegreesTest {
    @ParameterizedTest
    @CsvSource({"F, 32, 120", "F, -40, 31", "C, 0, 49", "C, -40, -1"})
    void a_whole_degree_typed_comes_back_as_the_same(String unit, int least, int most) {
        Units units = new Units(unit, "cm");
        for (int degree = least; degree <= most; degree++) {
            double kept = BigDecimal.valueOf(units.celsiusOf(degree))
                    .setScale(1, RoundingMode.HALF_UP)
                    .doubleValue();

            assertThat(units.typedTemperature(kept)).as("as typed").isEqualTo(degree);
            assertThat(units.temperature(kept)).as("as shown").isEqualTo(degree + " °" + unit);
        }
    }

    @ParameterizedTest
    @CsvSource({"F, 32, 120", "C, 0, 49"})
    void a_set_point_comes_back_as_typed_or_the_step_that_moved_it_is_said(String unit, int least, int most) {
        Units units = new Units(unit, "cm");
        for (int degree = least; degree <= most; degree++) {
            int kept = units.wholeCelsiusOf(degree);
            String said = units.steppedWords(degree);

            if (units.degrees(kept) == degree) {
                assertThat(said).isEmpty();
            } else {
                assertThat(said)
                        .startsWith("%d °F is kept as %d °F".formatted(degree, units.degrees(kept)))
                        .contains("%d °C".formatted(kept));
                assertThat(Math.abs(units.degrees(kept) - degree)).isEqualTo(1);
            }
            assertThat(units.wholeCelsiusOf((int) units.degrees(kept)))
                    .as("what is shown, typed again")
                    .isEqualTo(kept);
        }
    }
}
