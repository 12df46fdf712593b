package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import warmshelf.ReferenceTable;

/** Against Harrington and Minges (1954), days to emergence and normal seedlings, as reprinted in Knott's Handbook. */
class TestedResponseTest {
    private static final EmergenceTable TABLE = EmergenceTable.bundled();

    @ParameterizedTest
    @MethodSource("dayCells")
    void every_tested_cell_gives_the_printed_day(CSVRecord cell) {
        Optional<Emergence> emergence = response(cell.get("crop")).at(Double.parseDouble(cell.get("temp_c")));

        assertThat(emergence.orElseThrow().days()).isCloseTo(Double.parseDouble(cell.get("days")), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("cellsWithoutEmergence")
    void a_cell_without_emergence_or_without_a_test_promises_nothing(CSVRecord cell) {
        assertThat(response(cell.get("crop")).at(Double.parseDouble(cell.get("temp_c"))))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("shareCells")
    void every_cell_of_the_companion_table_gives_the_printed_share_where_seed_emerged(CSVRecord cell) {
        Emergence emergence = response(cell.get("crop"))
                .at(Double.parseDouble(cell.get("temp_c")))
                .orElseThrow();

        assertThat(emergence.normalShare().orElseThrow())
                .isCloseTo(Double.parseDouble(cell.get("percent_normal")) / 100, within(1e-9));
    }

    /** Typed from the printed table, so that a slip in reading the file shows. */
    @ParameterizedTest
    @CsvSource({"Pepper,15,25", "Pepper,25,8", "Tomato,10,43", "Onion,0,136", "Lettuce,25,2", "Okra,40,7", "Celery,20,7"
    })
    void printed_days(String vegetable, double celsius, double days) {
        assertThat(response(vegetable).at(celsius).orElseThrow().days()).isCloseTo(days, within(1e-9));
    }

    @Test
    void between_two_tested_temperatures_the_rate_is_linear() {
        // pepper: 13 days at 20 C and 8 at 25 C; half way the rate is (1/13 + 1/8)/2, so 9.905 days
        assertThat(response("Pepper").at(22.5).orElseThrow().days()).isCloseTo(9.905, within(0.001));
    }

    @Test
    void between_the_last_emergence_and_a_temperature_where_nothing_grew_nothing_is_promised() {
        TemperatureResponse pepper = response("Pepper");

        assertThat(pepper.at(14.9)).isEmpty();
        assertThat(pepper.at(35.1)).isEmpty();
        assertThat(pepper.possible()).isEqualTo(new CelsiusRange(15, 35));
    }

    @Test
    void a_share_that_was_not_recorded_stays_unknown_beyond_the_recorded_ones() {
        // cabbage emerged at 30 C, but its normal seedlings were recorded up to 25 C only
        assertThat(response("Cabbage").at(30).orElseThrow().normalShare()).isEqualTo(OptionalDouble.empty());
        assertThat(response("Cabbage").at(20).orElseThrow().normalShare().orElseThrow())
                .isCloseTo(0.96, within(0.001));
    }

    @Test
    void peppers_at_24_to_27_degrees_come_up_in_one_to_two_weeks() {
        // common practice of the trade
        for (double celsius = 25; celsius <= 27; celsius += 0.5) {
            Emergence emergence = response("Pepper").at(celsius).orElseThrow();
            assertThat(emergence.days5()).isCloseTo(7, within(0.01));
            assertThat(emergence.days95()).isCloseTo(14, within(0.01));
        }
    }

    private static TemperatureResponse response(String vegetable) {
        return new TestedResponse(TABLE.cellsOf(vegetable), "test");
    }

    static Stream<CSVRecord> dayCells() {
        return dayTable().stream().filter(cell -> cell.get("days").matches("\\d+"));
    }

    static Stream<CSVRecord> cellsWithoutEmergence() {
        return dayTable().stream().filter(cell -> !cell.get("days").matches("\\d+"));
    }

    static Stream<CSVRecord> shareCells() {
        Set<String> emerged = dayCells().map(TestedResponseTest::key).collect(Collectors.toSet());
        return ReferenceTable.rows("normal-seedlings-percent.csv").stream()
                .filter(cell -> !cell.get("percent_normal").isEmpty() && emerged.contains(key(cell)));
    }

    private static String key(CSVRecord cell) {
        return cell.get("crop") + " at " + cell.get("temp_c");
    }

    private static List<CSVRecord> dayTable() {
        List<CSVRecord> cells = ReferenceTable.rows("emergence-days.csv");
        assertThat(cells).as("24 vegetables at 9 temperatures").hasSize(216);
        return cells;
    }
}
