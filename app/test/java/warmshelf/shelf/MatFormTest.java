package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.web.FormReader;
import warmshelf.words.Units;

class MatFormTest {
    private static final Units FAHRENHEIT = new Units("F", "in");

    @Test
    void a_mat_typed_in_fahrenheit_is_kept_in_whole_celsius() {
        FormReader reader = reader(mat(), "low", "68", "high", "86", "usual", "79");

        MatDraft draft = MatForm.read(reader, FAHRENHEIT);

        assertThat(reader.problems()).isEmpty();
        assertThat(draft).isEqualTo(new MatDraft("M1", 1, 4, 20, 30, 107, 26));
    }

    @Test
    void a_mat_shown_again_in_fahrenheit_and_saved_unchanged_keeps_its_temperatures() {
        for (int celsius = 5; celsius <= 45; celsius++) {
            Mat mat = new Mat(
                    Stand.M1, Stand.M1, "M1", 1, celsius, celsius, 107, celsius, 1, List.of(new Place(Stand.M1, 1)));

            MatDraft draft = MatForm.read(new FormReader(MatForm.typed(mat, FAHRENHEIT)), FAHRENHEIT);

            assertThat(draft).isEqualTo(new MatDraft("M1", 1, 1, celsius, celsius, 107, celsius));
        }
    }

    @Test
    void a_temperature_that_is_kept_as_another_is_said_once() {
        FormReader reader = reader(mat(), "low", "68", "high", "86", "usual", "81");

        assertThat(MatForm.told("Mat M1 is added.", reader, FAHRENHEIT))
                .isEqualTo("Mat M1 is added. 81 °F is kept as 80 °F: mats are set in whole degrees Celsius, and the"
                        + " nearest is 27 °C.");
        assertThat(MatForm.told(
                        "Mat M1 is added.", reader(mat(), "usual", "79", "low", "68", "high", "86"), FAHRENHEIT))
                .isEqualTo("Mat M1 is added.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "name||Name of the mat is empty",
                "places|0|Places was '0'; a whole number from 1 to 12",
                "places|13|Places was '13'; a whole number from 1 to 12",
                "watts|-5|Watts was '-5'",
                "high|19|Highest set-point was 19 °C; it must not be below the lowest, 20 °C",
                "usual|31|Usual set-point was 31 °C; this thermostat goes from 20–30 °C",
                "low|warm|Lowest set-point was 'warm'; a whole number from 5 to 45",
            })
    void a_mat_that_cannot_be_is_refused_with_the_reason(String field, String typed, String sentence) {
        FormReader reader = reader(mat(), field, typed == null ? "" : typed);

        MatForm.read(reader, Units.METRIC);

        assertThat(reader.problems()).containsOnlyKeys(field);
        assertThat(reader.problems().get(field)).startsWith(sentence);
    }

    @Test
    void bounds_are_named_in_the_unit_that_is_typed() {
        FormReader reader = reader(mat(), "low", "20", "high", "86", "usual", "79");

        MatForm.read(reader, FAHRENHEIT);

        assertThat(reader.problems().get("low")).contains("from 41 to 113");
    }

    private static Map<String, List<String>> mat() {
        return Map.of(
                "name", List.of("M1"),
                "walkOrder", List.of("1"),
                "places", List.of("4"),
                "low", List.of("20"),
                "high", List.of("30"),
                "watts", List.of("107"),
                "usual", List.of("26"));
    }

    private static FormReader reader(Map<String, List<String>> start, String... more) {
        Map<String, List<String>> typed = new HashMap<>(start);
        for (int index = 0; index < more.length; index += 2) {
            typed.put(more[index], List.of(more[index + 1]));
        }
        return new FormReader(typed);
    }
}
