package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.UUID;
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
    void without_a_published_range_a_cell_without_days_promises_nothing(CSVRecord cell) {
        assertThat(response(cell.get("crop")).at(Double.parseDouble(cell.get("temp_c"))))
                .isEmpty();
    }

    @Test
    void each_of_the_216_cells_is_told_apart_as_the_two_prints_have_them() {
        Map<Class<?>, Long> kinds = dayTable().stream()
                .map(cell -> cell(cell.get("crop"), Double.parseDouble(cell.get("temp_c"))))
                .collect(Collectors.groupingBy(Object::getClass, Collectors.counting()));

        // counted on the printed pages: 135 cells with days; 6 without days in which the companion table counts 10 to
        // 65
        // seedlings of a hundred; 38 more with NG (in 7 of them it counts one or two); 37 more dashes
        assertThat(kinds)
                .containsEntry(TestedCell.CameUp.class, 135L)
                .containsEntry(TestedCell.CameUpUntimed.class, 6L)
                .containsEntry(TestedCell.NothingGrew.class, 38L)
                .containsEntry(TestedCell.NotTested.class, 37L);
    }

    /** As printed: "NG = No germination, - = not tested" stands beneath the table of days. */
    @ParameterizedTest
    @CsvSource({
        "Celery,25,CameUpUntimed",
        "Celery,30,NothingGrew",
        "Celery,40,NotTested",
        "Cabbage,5,CameUpUntimed",
        "Cabbage,35,NotTested",
        "Eggplant,15,NotTested",
        "Watermelon,5,NothingGrew",
        "Watermelon,10,NotTested",
        "Pepper,10,NothingGrew",
        "Tomato,40,NothingGrew"
    })
    void not_tested_is_not_zero(String vegetable, double celsius, String kind) {
        assertThat(cell(vegetable, celsius).getClass().getSimpleName()).isEqualTo(kind);
    }

    /**
     * What is said where no days are printed, against a second published range: the soil temperatures of Alabama Cooperative
     * Extension ANR-1061 (40 to 85 °F for celery, 60 to 95 °F for eggplant and pepper, 40 to 100 °F for cabbage).
     */
    @ParameterizedTest
    @CsvSource({
        "celery,22,published range",
        "celery,25,published range",
        "celery,29,published range",
        "celery,29.5,not tested",
        "celery,30,nothing grew",
        "celery,33,nothing grew",
        "celery,20,trial",
        "celeriac,22,published range",
        "eggplant,17,published range",
        "eggplant,33,published range",
        "eggplant,15,not tested",
        "eggplant,36,not tested",
        "cabbage,5,published range",
        "cabbage,4,not tested",
        "watermelon,16,days not published",
        "watermelon,5,nothing grew",
        "pepper,10,nothing grew",
        "pepper,12,not tested",
        "pepper,40,nothing grew",
        "basil,25,stated range",
        "basil,35,not tested"
    })
    void where_no_days_are_printed_the_published_range_decides_and_it_is_said(String id, double celsius, String basis) {
        CropCatalogue crops = CropCatalogue.bundled();

        assertThat(ProspectWords.basis(crops.responseOf(crops.get(id)).prospect(celsius)))
                .isEqualTo(basis);
    }

    @Test
    void celery_comes_up_at_22_degrees_and_its_days_are_called_reckoned() {
        CropCatalogue crops = CropCatalogue.bundled();
        Prospect prospect = crops.responseOf(crops.get("celery")).prospect(22);

        // 97 % at 20 C and 65 % at 25 C are printed; two fifths of the way is 84.2 %
        Emergence emergence = prospect.emergence().orElseThrow();
        assertThat(emergence.normalShare().orElseThrow()).isCloseTo(0.842, within(1e-9));
        assertThat(emergence.days5()).isEqualTo(emergence.days() / 2);
        assertThat(emergence.days95()).isEqualTo(emergence.days() * 2);
        assertThat(ProspectWords.note(prospect)).contains("reckoned");
    }

    @Test
    void reckoned_days_never_move_what_is_called_comfortable_beyond_the_published_best() {
        CropCatalogue crops = CropCatalogue.bundled();
        for (Crop crop : crops.all()) {
            TemperatureResponse response = crops.responseOf(crop);
            // celery and celeriac: best at 60 to 70 °F (15.6 to 21.1 C), Alabama ANR-1061
            double most =
                    crop.species().startsWith("Apium") ? 21.1 : response.timed().high();
            assertThat(response.comfortable().high()).as(crop.id()).isLessThanOrEqualTo(most);
            assertThat(response.comfortable().low())
                    .as(crop.id())
                    .isGreaterThanOrEqualTo(response.timed().low());
        }
    }

    @Test
    void a_sowing_at_a_temperature_with_reckoned_days_teaches_nothing_of_the_published_ones() {
        CropCatalogue crops = CropCatalogue.bundled();
        UUID lot = new UUID(0, 1);
        List<SeenEmergence> slow = List.of(seen(lot, 25), seen(lot, 26), seen(lot, 27));

        assertThat(LearnedEmergence.of(crops.responseOf(crops.get("celery")), slow)
                        .sowings())
                .isZero();
    }

    private static SeenEmergence seen(UUID lot, double celsius) {
        return new SeenEmergence(UUID.randomUUID(), lot, Method.CELLS, celsius, 18, 20);
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

    private static TestedCell cell(String vegetable, double celsius) {
        return TABLE.cellsOf(vegetable).stream()
                .filter(cell -> cell.celsius() == celsius)
                .findFirst()
                .orElseThrow();
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
