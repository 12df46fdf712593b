package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

class MatFormTest {
    private static final Units FAHRENHEIT = Units.AMERICAN;

    @Test
    void a_mat_typed_in_fahrenheit_is_kept_in_celsius_to_a_tenth() {
        FormReader reader = reader(mat(), "low", "68", "high", "86", "usual", "79");

        MatDraft draft = MatForm.read(reader, FAHRENHEIT);

        assertThat(reader.problems()).isEmpty();
        assertThat(draft).isEqualTo(new MatDraft("M1", 1, 4, 20, 30, 107, 26.1));
    }

    @Test
    void a_mat_shown_again_and_saved_unchanged_keeps_its_temperatures_in_either_unit() {
        for (Units reader : List.of(FAHRENHEIT, Units.METRIC)) {
            for (int tenths = 50; tenths <= 450; tenths++) {
                double celsius = tenths / 10.0;
                Mat mat = new Mat(
                        DrawnCellar.M1,
                        DrawnCellar.M1,
                        "M1",
                        1,
                        celsius,
                        celsius,
                        107,
                        celsius,
                        LightAbove.NOT_KNOWN,
                        1,
                        List.of(new Place(DrawnCellar.M1, 1)));

                MatDraft draft = MatForm.read(new FormReader(MatForm.typed(mat, reader)), reader, mat);

                assertThat(draft).isEqualTo(new MatDraft("M1", 1, 1, celsius, celsius, 107, celsius));
            }
        }
    }

    @Test
    void a_usual_set_point_at_the_end_of_a_thermostat_set_in_the_other_unit_is_taken() {
        FormReader reader = reader(mat(), "low", "70", "high", "81", "usual", "81");
        MatDraft draft = MatForm.read(reader, FAHRENHEIT);
        Mat mat = new Mat(
                DrawnCellar.M1,
                DrawnCellar.M1,
                "M1",
                1,
                draft.lowC(),
                draft.highC(),
                107,
                draft.usualC(),
                draft.light(),
                1,
                List.of());

        FormReader metric = reader(MatForm.typed(mat, Units.METRIC), "places", "1", "usual", "21");

        assertThat(MatForm.read(metric, Units.METRIC, mat)).isEqualTo(new MatDraft("M1", 1, 1, 21.1, 27.2, 107, 21));
        assertThat(metric.problems()).isEmpty();
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
