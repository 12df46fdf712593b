package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.words.Units;

class ThermostatTest {
    // 70 °F is 21.1 °C and 90 °F 32.2 °C, 69 and 91 °F are 20.6 and 32.8 °C: by definition of the scales, to a tenth.
    @ParameterizedTest
    @CsvSource({"21.1,yes", "32.2,yes", "21,yes", "32,yes", "20.6,yes", "20.4,no", "32.8,no", "26.7,yes"})
    void holds_what_counts_as_a_degree_between_its_ends_whichever_unit_it_is_typed_in(double celsius, String holds) {
        assertThat(new Thermostat(21.1, 32.2).contains(celsius)).isEqualTo(holds.equals("yes"));
    }

    @Test
    void is_told_in_the_readers_unit_as_it_was_typed() {
        assertThat(new Thermostat(21.7, 32.8).words(Units.AMERICAN)).isEqualTo("71–91 °F");
        assertThat(new Thermostat(21.7, 32.8).words(Units.METRIC)).isEqualTo("22–33 °C");
    }
}
