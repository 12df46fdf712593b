package warmshelf.frost.garden;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.frost.Threshold;
import warmshelf.words.Degrees;
import warmshelf.words.Units;

class DegreesTest {
    private static final Units FAHRENHEIT = Units.AMERICAN;

    // NOAA's climate normals give 36, 32 and 28 °F as 2.2, 0 and -2.2 °C
    @ParameterizedTest
    @CsvSource({"36,2.2", "32,0.0", "28,-2.2", "-40,-40.0", "113,45.0", "-76,-60.0"})
    void fahrenheit_becomes_tenths_of_celsius_as_services_round_it(double fahrenheit, double celsius) {
        assertThat(Degrees.celsius(fahrenheit, FAHRENHEIT)).isEqualTo(celsius);
    }

    @Test
    void each_half_degree_fahrenheit_comes_back_as_itself() {
        for (int halves = -152; halves <= 226; halves++) {
            double typed = halves / 2.0;
            assertThat(Degrees.figure(Degrees.celsius(typed, FAHRENHEIT), FAHRENHEIT))
                    .isEqualTo(typed);
        }
    }

    @ParameterizedTest
    @CsvSource({"F, -40, 113", "C, -40, 45"})
    void each_whole_degree_of_a_night_comes_back_in_its_form(String unit, int least, int most) {
        Units units = Units.of(unit, "in");
        LocalDate day = LocalDate.of(2027, 5, 20);
        for (int degree = least; degree <= most; degree++) {
            NightForm typed = NightForm.of(
                    Map.of("day", List.of(day.toString()), "temperature", List.of(String.valueOf(degree))), day, units);

            NightForm again = NightForm.showing(day, new Night(day, typed.celsius(), ""), units);

            assertThat(again.typed().get("temperature")).isEqualTo(degree + ".0");
        }
    }

    @Test
    void each_tenth_of_celsius_comes_back_as_itself() {
        for (int tenths = -600; tenths <= 450; tenths++) {
            double celsius = tenths / 10.0;
            assertThat(Degrees.figure(celsius, Units.METRIC)).isEqualTo(celsius);
            double shown = Degrees.figure(celsius, FAHRENHEIT);
            assertThat(Degrees.celsius(shown, FAHRENHEIT)).as("%s °F", shown).isEqualTo(celsius);
        }
    }

    @Test
    void what_is_read_as_a_threshold_counts_as_one() {
        assertThat(NightWords.of(Degrees.celsius(28, FAHRENHEIT))).isEqualTo("killing frost");
        assertThat(NightWords.of(Degrees.celsius(36, FAHRENHEIT))).isEqualTo("ground may freeze");
        assertThat(NightWords.of(Threshold.FROST.celsius())).isEqualTo("frost");
        assertThat(NightWords.of(2.3)).isEqualTo("no frost");
    }

    @Test
    void nothing_is_written_as_minus_zero() {
        assertThat(Degrees.words(-0.04, Units.METRIC)).isEqualTo("0.0 °C");
        assertThat(Degrees.words(-2, Units.METRIC)).isEqualTo("-2.0 °C");
        assertThat(Degrees.words(-2, FAHRENHEIT)).isEqualTo("28.4 °F");
        assertThat(FAHRENHEIT.temperatureDifference(10)).isEqualTo("18 °F");
    }

    @Test
    void heights_are_read_in_feet_or_metres() {
        assertThat(Height.metres(1000, FAHRENHEIT)).isEqualTo(304.8); // the international foot is 0.3048 m
        assertThat(FAHRENHEIT.height(304.8)).isEqualTo("1,000 ft");
        assertThat(Units.METRIC.height(304.8)).isEqualTo("305 m");
        assertThat(Height.words(new GardenPoint(-33.5, 18.25, 12), Units.METRIC))
                .isEqualTo("33.5° S, 18.25° E, 12 m above the sea");
        assertThat(Height.words(new GardenPoint(50, 0, 100), Units.METRIC))
                .isEqualTo("50° N, 0° E, 100 m above the sea");
    }
}
