package warmshelf.frost.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.BadInput;
import warmshelf.frost.Threshold;
import warmshelf.frost.YearDay;
import warmshelf.frost.station.Side;

/** The service's published dates of {@link Normals} come out as they went in. */
class NormalsFileTest {
    private static final String SHORT =
            "STATION,LATITUDE,LONGITUDE,ELEVATION,NAME,ANN-TMIN-PRBLST-T32FP50,ANN-TMIN-PRBFST-T32FP50\n";

    @TempDir
    Path folder;

    @Test
    void a_stations_published_middle_dates_are_taken() {
        StationReading albany = read(Normals.FILE).stations.get(0);

        assertThat(albany.code()).isEqualTo("USW00014735");
        assertThat(albany.name()).isEqualTo("ALBANY INTL AP, NY US");
        assertThat(albany.elevationM()).isEqualTo(85.6);
        assertThat(date(albany, Threshold.FROST, Side.SPRING)).isEqualTo(LocalDate.of(2027, 4, 27));
        assertThat(date(albany, Threshold.FROST, Side.AUTUMN)).isEqualTo(LocalDate.of(2027, 10, 15));
        assertThat(date(albany, Threshold.KILLING, Side.SPRING)).isEqualTo(LocalDate.of(2027, 4, 16));
        assertThat(date(albany, Threshold.KILLING, Side.AUTUMN)).isEqualTo(LocalDate.of(2027, 10, 28));
        assertThat(albany.days()).hasSize(4).allSatisfy(day -> {
            assertThat(day.anyFrost()).isNull();
            assertThat(day.seasons()).isNull();
        });
    }

    @Test
    void the_spread_is_the_slope_of_a_straight_line_through_the_published_levels() {
        // a second opinion: the regression of another library on the quantiles of the normal tables
        SimpleRegression line = new SimpleRegression();
        line.addData(1.2815516, 131);
        line.addData(0, 117);
        line.addData(-1.2815516, 106);

        FrostDay spring = day(read(Normals.FILE).stations.get(0), Threshold.FROST, Side.SPRING);

        assertThat(spring.yearSdDays()).isCloseTo(line.getSlope(), within(1e-6));
    }

    @Test
    void without_a_middle_date_it_is_read_off_the_line() {
        LevelFit fit = Objects.requireNonNull(LevelFit.of(Side.AUTUMN, Map.of(10, 280, 90, 300)));

        assertThat(fit.medianDay()).isCloseTo(290, within(1e-9));
        assertThat(fit.sdDays()).isCloseTo(20 / (2 * 1.2815516), within(1e-6));
        assertThat(LevelFit.of(Side.AUTUMN, Map.of(10, 280))).isNull();
    }

    @Test
    void dates_beyond_midsummer_belong_to_the_season_they_are_of() {
        StationReading warm =
                read(SHORT + "X1,29,-95,10,Gulf,12/20,01/15\n").stations.get(0);

        // counted from 1 August to the end of July, as the service does
        assertThat(date(warm, Threshold.FROST, Side.SPRING)).isEqualTo(LocalDate.of(2026, 12, 20));
        assertThat(date(warm, Threshold.FROST, Side.AUTUMN)).isEqualTo(LocalDate.of(2028, 1, 15));
    }

    @ParameterizedTest
    @CsvSource({"05/14", "0514", "05-14"})
    void a_date_may_be_written_in_each_of_the_services_ways(String written) {
        StationReading station = read(SHORT + "X1,46,-92,300,Hill," + written + ",09/28\n")
                .stations
                .get(0);

        assertThat(date(station, Threshold.FROST, Side.SPRING)).isEqualTo(LocalDate.of(2027, 5, 14));
    }

    @Test
    void where_frost_is_too_rare_there_is_no_date_but_a_small_share() {
        FrostDay spring =
                day(read(SHORT + "X1,25,-80,3,Key,-6666,-6666\n").stations.get(0), Threshold.FROST, Side.SPRING);

        assertThat(spring.anyFrost()).isEqualTo(0.05);
        assertThat(spring.medianDay()).isNull();
    }

    @Test
    void where_frost_may_come_on_any_day_the_row_says_so_and_the_rest_is_taken() {
        Found found = read(SHORT + "X1,40,-106,3500,Peak,-4444,09/02\n");

        assertThat(found.stations.get(0).days()).hasSize(1);
        assertThat(found.problems).hasSize(1);
        assertThat(found.problems.get(0).line()).isEqualTo(2);
        assertThat(found.problems.get(0).sentence()).contains("X1", "last 32 °F", "-4444", "any day of the year");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "X1,95,-92,300,Hill,05/14,09/28|latitude|95",
                "X1,46,-92,,Hill,05/14,09/28|elevation|''",
                "X1,46,-92,-999.9,Hill,05/14,09/28|elevation|-999.9",
                "X1,46,-92,300,Hill,14/05,09/28|last 32 °F|14/05",
                "X1,46,-92,300,Hill,Hill,09/28|last 32 °F|Hill",
                "X1,46,-92,300,Hill,-9999,-7777|X1|no frost date",
                ",46,-92,300,Hill,05/14,09/28|STATION|empty",
                "X1,46,-92,300,Hill|5 columns|7",
                "X0,46,-92,300,Hill,05/14,09/28|X0|before"
            })
    void a_row_that_cannot_be_used_is_named_and_the_others_are_taken(String row, String what, String given) {
        Found found = read(SHORT + "X0,46,-92,300,Lake,05/14,09/28\n" + row + "\nX9,46,-92,300,Top,05/14,09/28\n");

        assertThat(found.stations).extracting(StationReading::code).containsExactly("X0", "X9");
        assertThat(found.problems).hasSize(1);
        assertThat(found.problems.get(0).line()).isEqualTo(3);
        assertThat(found.problems.get(0).sentence().toLowerCase(java.util.Locale.ROOT))
                .contains(what.toLowerCase(java.util.Locale.ROOT), given.toLowerCase(java.util.Locale.ROOT));
    }

    @Test
    void dates_that_run_the_wrong_way_round_show_that_columns_are_mixed_up() {
        Found found = read(Normals.HEADING
                + Normals.ALBANY.replace("\"05/11\",\" \",\"04/27\",\"04/16\"", "\"04/16\",\" \",\"04/27\",\"05/11\""));

        assertThat(found.stations).isEmpty();
        assertThat(found.problems.get(0).sentence()).contains("last 32 °F", "wrong way round");
    }

    @Test
    void joined_files_may_repeat_the_heading_with_other_columns() {
        Found found = read(Normals.FILE + SHORT + "X1,46,-92,300,Hill,05/14,09/28\n");

        assertThat(found.problems).isEmpty();
        assertThat(found.stations).extracting(StationReading::code).containsExactly("USW00014735", "X1");
    }

    @Test
    void many_stations_come_in_one_zip_and_what_is_no_normals_is_named() throws IOException {
        byte[] zip = zip(Map.of("USW00014735.csv", Normals.FILE, "readme.txt", "words", "other.csv", "a,b\n1,2\n"));

        Found found = Found.in(folder, ImportKind.NORMALS, null, Found.file(folder, "normals.zip", zip));

        assertThat(found.stations).extracting(StationReading::code).containsExactly("USW00014735");
        assertThat(found.problems).hasSize(1);
        assertThat(found.problems.get(0).sentence()).startsWith("other.csv, line 1: ");
    }

    @Test
    void a_zip_that_unpacks_without_end_is_stopped() {
        CountedInput counting = new CountedInput((bytes, rows) -> {}, 1_000_000);

        assertThatThrownBy(() -> counting.text(new Endless()).readAllBytes())
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("unpacks to more than 1 MB");
    }

    /** Zeros without end. */
    private static final class Endless extends java.io.InputStream {
        @Override
        public int read() {
            return 0;
        }
    }

    static byte[] zip(Map<String, String> texts) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> text : texts.entrySet()) {
                zip.putNextEntry(new ZipEntry(text.getKey()));
                zip.write(text.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
        return bytes.toByteArray();
    }

    private Found read(String text) {
        return Found.in(folder, ImportKind.NORMALS, "normals.csv", text);
    }

    private static FrostDay day(StationReading station, Threshold threshold, Side side) {
        return station.days().stream()
                .filter(day -> day.threshold() == threshold && day.side() == side)
                .findFirst()
                .orElseThrow();
    }

    private static LocalDate date(StationReading station, Threshold threshold, Side side) {
        return YearDay.in(
                2027, Objects.requireNonNull(day(station, threshold, side).medianDay()));
    }
}
