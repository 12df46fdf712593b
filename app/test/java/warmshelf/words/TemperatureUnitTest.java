package warmshelf.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemperatureUnitTest {
    // NIST Special Publication 811, B.8: t/°C = (t/°F - 32)/1.8; water freezes at 32 and boils at 212 °F, and -40 is
    // the same in both
    @ParameterizedTest
    @CsvSource({"32, 0", "212, 100", "-40, -40", "50, 10", "68, 20"})
    void fahrenheit_and_celsius_are_each_other_s_way_back(double fahrenheit, double celsius) {
        assertThat(TemperatureUnit.FAHRENHEIT.toCelsius(fahrenheit)).isEqualTo(celsius);
        assertThat(TemperatureUnit.FAHRENHEIT.fromCelsius(celsius)).isEqualTo(fahrenheit);
        assertThat(TemperatureUnit.CELSIUS.toCelsius(celsius)).isEqualTo(celsius);
        assertThat(TemperatureUnit.CELSIUS.fromCelsius(celsius)).isEqualTo(celsius);
    }

    // the same, B.8: a difference of 1.8 °F is one of 1 °C
    @Test
    void a_difference_has_no_freezing_point() {
        assertThat(TemperatureUnit.FAHRENHEIT.differenceFromCelsius(10)).isEqualTo(18);
        assertThat(TemperatureUnit.FAHRENHEIT.differenceToCelsius(18)).isEqualTo(10);
        assertThat(TemperatureUnit.CELSIUS.differenceFromCelsius(10)).isEqualTo(10);
    }

    @Test
    void units_are_found_by_what_the_database_keeps() {
        assertThat(Units.of("F", "in")).isEqualTo(Units.AMERICAN);
        assertThat(Units.of("C", "cm")).isEqualTo(Units.METRIC);
        assertThat(TemperatureUnit.letters()).containsExactly("C", "F");
        assertThat(LengthUnit.words()).containsExactly("cm", "in");
        assertThatThrownBy(() -> Units.of("K", "in")).hasMessageContaining("K");
        assertThatThrownBy(() -> Units.of("C", "ft")).hasMessageContaining("ft");
    }
}
