package warmshelf.frost.files;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.FROST_STATION;
import static warmshelf.db.generated.Tables.FROST_STATION_DATE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** The means are about those of Duluth, Minnesota, in degrees Fahrenheit, as the group of the tests reads. */
class MonthlyPagesTest {
    private static final List<String> MEANS =
            List.of("1.5", "5.7", "17.1", "29.3", "38.9", "47.6", "55.3", "54.7", "46.4", "35.4", "22.4", "8.2");

    private TestGroup group;
    private Browser ilse;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        ilse = group.signedIn(group.coordinator());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void what_would_come_of_it_is_shown_before_anything_is_kept() {
        Answer shown = ilse.post("/frost/months", fields(Map.of()));

        assertThat(shown.status()).isEqualTo(200);
        assertThat(shown.text()).contains("What comes of it").contains("May").contains("Nothing is kept yet");
        assertThat(shown.typed("name")).isEqualTo("Hilltop");
        assertThat(group.database().sql().fetchCount(FROST_STATION)).isZero();
    }

    @Test
    void it_is_kept_with_dates_for_three_thresholds_and_removed_again() {
        assertThat(ilse.post("/frost/months", fields(Map.of("do", "keep"))).status())
                .isEqualTo(303);

        assertThat(group.database().sql().fetchCount(FROST_STATION_DATE)).isEqualTo(6);
        assertThat(ilse.get("/frost/evidence").text())
                .contains("Stations in use: 1")
                .contains("Hilltop")
                .contains("1,400 ft")
                .contains("Manual of the county");
        String id = String.valueOf(group.database()
                .sql()
                .select(FROST_STATION.ID)
                .from(FROST_STATION)
                .fetchSingle()
                .value1());
        assertThat(ilse.post("/frost/stations/" + id + "/removal").status()).isEqualTo(303);
        assertThat(ilse.post("/frost/stations/" + id + "/removal").status()).isEqualTo(409);
        assertThat(ilse.get("/frost/evidence").text()).contains("Stations in use: 0");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "jan|cold|January in °F was 'cold'; a number from -94 to 104",
                "jul|300|July in °F was '300'",
                "feb|''|February in °F was ''",
                "latitude|95|Latitude was '95'",
                "elevation|30000|Height in feet was '30000'",
                "name|''|Name of the place is empty",
                "source|''|Where the figures are from is empty"
            })
    void what_cannot_be_used_is_said_and_the_rest_is_kept(String field, String typed, String sentence) {
        Answer answer = ilse.post("/frost/months", fields(Map.of(field, typed, "do", "keep")));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.typed("dec")).isEqualTo("8.2");
        assertThat(group.database().sql().fetchCount(FROST_STATION)).isZero();
    }

    @Test
    void colder_nights_end_earlier_in_spring_and_begin_later_in_autumn() {
        double[] cold = {-17, -15, -8, -1.5, 4, 9, 13, 12.5, 8, 2, -5, -13};
        StationReading told = MonthlyStation.of("Hilltop", new TypedPlace(46.8, -92.1, 430), cold);

        assertThat(day(told, Threshold.LIGHT, Side.SPRING)).isGreaterThan(day(told, Threshold.FROST, Side.SPRING));
        assertThat(day(told, Threshold.FROST, Side.SPRING)).isGreaterThan(day(told, Threshold.KILLING, Side.SPRING));
        assertThat(day(told, Threshold.LIGHT, Side.AUTUMN)).isLessThan(day(told, Threshold.FROST, Side.AUTUMN));
        assertThat(day(told, Threshold.FROST, Side.AUTUMN)).isLessThan(day(told, Threshold.KILLING, Side.AUTUMN));
    }

    @Test
    void where_frost_hardly_ever_comes_there_is_no_date() {
        double[] warm = {18, 18, 19, 20, 22, 24, 25, 25, 24, 22, 20, 18};
        StationReading told = MonthlyStation.of("Harbour", new TypedPlace(25, -80, 3), warm);

        assertThat(told.days()).hasSize(6).allSatisfy(day -> {
            assertThat(day.medianDay()).isNull();
            assertThat(day.anyFrost()).isLessThan(0.1);
        });
    }

    private static double day(StationReading station, Threshold threshold, Side side) {
        return station.days().stream()
                .filter(day -> day.threshold() == threshold && day.side() == side)
                .mapToDouble(day -> java.util.Objects.requireNonNull(day.medianDay()))
                .findFirst()
                .orElseThrow();
    }

    private static Map<String, String> fields(Map<String, String> changes) {
        Map<String, String> fields = new LinkedHashMap<>(Map.of(
                "name", "Hilltop",
                "latitude", "46.8",
                "longitude", "-92.1",
                "elevation", "1400",
                "source", "Manual of the county",
                "do", "show"));
        List<MonthsForm.MonthField> months = MonthsForm.months();
        for (int i = 0; i < months.size(); i++) {
            fields.put(months.get(i).field(), MEANS.get(i));
        }
        fields.putAll(changes);
        return fields;
    }
}
