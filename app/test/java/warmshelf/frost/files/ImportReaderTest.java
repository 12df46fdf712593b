package warmshelf.frost.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.BadInput;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;

class ImportReaderTest {
    private static final String STATIONS =
            "station,station_id,latitude,longitude,elevation_m,spring_p50,autumn_p50,spring_p10,spring_p90\n";

    @TempDir
    Path folder;

    @Test
    void good_stations_are_taken_and_the_others_are_named_by_line() {
        Found found = Found.in(
                folder,
                ImportKind.STATIONS,
                "stations.csv",
                STATIONS
                        + "Lakeside,a,46.8,-92.1,180,05-14,10-10,05-27,05-01\n"
                        + "Hill,b,146,-92,300,05-20,09-28,,\n"
                        + "Turned,c,46,-92,300,05-20,09-28,05-01,05-27\n"
                        + "Rare,d,25,-80,3,,,,\n"
                        + "Short,e,46\n");

        assertThat(found.stations).extracting(StationReading::name).containsExactly("Lakeside", "Rare");
        assertThat(found.problems).extracting(ImportProblem::line).containsExactly(3L, 4L, 6L);
        assertThat(found.problems.get(1).sentence()).contains("wrong way round");
        FrostDay spring = found.stations.get(0).days().get(0);
        assertThat(spring.medianDay()).isEqualTo(134.0); // 14 May is the 134th day of a common year
        assertThat(spring.yearSdDays()).isCloseTo(26 / (2 * 1.2816), within(1e-9));
        assertThat(found.stations.get(1).days())
                .allSatisfy(day -> assertThat(day.medianDay()).isNull());
    }

    @Test
    void a_heading_that_lacks_columns_is_refused_by_their_names() {
        assertThatThrownBy(() -> Found.in(folder, ImportKind.STATIONS, "s.csv", "latitude,spring_p50\n1,05-14\n"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("no column longitude, elevation_m, autumn_p50");
    }

    @Test
    void postcodes_that_share_a_code_are_joined_at_their_middle() {
        Found found = Found.in(
                folder,
                ImportKind.POSTCODES,
                "GB.txt",
                postcode("GB", "ab1 0aa", "First", "57.0", "-2.0")
                        + postcode("GB", "B-2", "Other", "52.5", "-1.9")
                        + postcode("GB", "AB10AA", "Second", "57.2", "-2.4"));

        assertThat(found.places)
                .containsExactlyInAnyOrder(
                        new PostcodeRow("GB", "AB10AA", "First", "Scotland", 57.1, -2.2),
                        new PostcodeRow("GB", "B2", "Other", "Scotland", 52.5, -1.9));
    }

    @Test
    void a_postcode_row_that_cannot_be_used_is_named() {
        Found found = Found.in(
                folder,
                ImportKind.POSTCODES,
                "GB.txt",
                postcode("GB", "A1", "First", "57.0", "-2.0")
                        + postcode("GB", "A2", "Second", "157.0", "-2.0")
                        + postcode("Gb", "A3", "Third", "57.0", "-2.0")
                        + "GB\tA4\n"
                        + postcode("GB", "?", "Fifth", "57.0", "-2.0"));

        assertThat(found.places).extracting(PostcodeRow::code).containsExactly("A1");
        assertThat(found.problems).extracting(ImportProblem::line).containsExactly(2L, 3L, 4L, 5L);
    }

    @Test
    void the_zip_of_postcodes_is_read_without_its_readme_and_leaves_no_files() throws IOException {
        byte[] zip = NormalsFileTest.zip(
                Map.of("readme.txt", "Readme\nfor GeoNames", "GB.txt", postcode("GB", "A1", "First", "57.0", "-2.0")));

        Found found = Found.in(folder, ImportKind.POSTCODES, null, Found.file(folder, "GB.zip", zip));

        assertThat(found.places).hasSize(1);
        assertThat(found.problems).isEmpty();
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(path -> path.getFileName().toString())).containsExactly("GB.zip");
        }
    }

    @Test
    void nights_become_dates_and_seasons_at_three_thresholds() {
        UploadedFile file =
                Found.file(folder, "garden.csv", nights().getBytes(java.nio.charset.StandardCharsets.UTF_8));

        Found found = Found.in(folder, ImportKind.NIGHTS, new TypedPlace(46.8, -92.1, 180), file);

        StationReading station = found.stations.get(0);
        assertThat(station.days()).hasSize(6);
        // the file has its last frost of each spring on 10 May and its first of each autumn on 5 October
        assertThat(station.seasons())
                .contains(
                        new StationReading.Season(Threshold.FROST, Side.SPRING, 2016, LocalDate.of(2016, 5, 10)),
                        new StationReading.Season(Threshold.FROST, Side.AUTUMN, 2016, LocalDate.of(2016, 10, 5)));
        assertThat(station.days())
                .filteredOn(day -> day.threshold() == Threshold.FROST && day.side() == Side.SPRING)
                .allSatisfy(day -> {
                    assertThat(day.anyFrost()).isEqualTo(1.0);
                    assertThat(day.medianDay()).isEqualTo(130.0);
                    assertThat(day.yearSdDays()).isNull(); // the same day each year: no spread to tell
                });
        assertThat(found.notes).anySatisfy(note -> assertThat(note).contains("0 °C or less"));
    }

    @Test
    void nights_of_nowhere_are_refused() {
        assertThatThrownBy(() -> Found.in(folder, ImportKind.NIGHTS, "garden.csv", nights()))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("does not say where its station lies");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "date,tmin;2021-03-01,-1|NIGHTS",
                "USC00219999,20210301,TMIN,-25,,,7,0700|NIGHTS",
                "latitude,longitude,elevation_m,spring_p50,autumn_p50|STATIONS",
                "latitude,spring_p50|STATIONS",
                "STATION,LATITUDE,LONGITUDE,ELEVATION,ANN-TMIN-PRBLST-T32FP50|NORMALS"
            })
    void a_file_is_told_by_its_first_line(String text, ImportKind kind) throws IOException {
        assertThat(told(text.replace(';', '\n'), null).kind()).isEqualTo(kind);
    }

    @Test
    void postcodes_are_told_by_their_tabs() throws IOException {
        assertThat(told(postcode("GB", "A1", "First", "57.0", "-2.0"), null).kind())
                .isEqualTo(ImportKind.POSTCODES);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|is empty",
                "<!DOCTYPE html>;<title>404</title>|page of a web site",
                "some words;and more|none of the files that can be read",
                "a\u0001b|no text file"
            })
    void what_is_no_such_file_is_refused_with_its_reason(String text, String reason) {
        assertThatThrownBy(() -> told(text.replace(';', '\n'), null))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(reason);
    }

    @Test
    void a_line_without_end_is_refused() {
        assertThatThrownBy(() -> told("x".repeat(ImportReader.LONGEST_LINE + 40_000), null))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("more than 400,000 letters");
    }

    @Test
    void another_kind_than_chosen_is_refused_with_what_it_looks_like() {
        assertThatThrownBy(() -> told("date,tmin\n2021-03-01,-1\n", ImportKind.POSTCODES))
                .isInstanceOf(BadInput.class)
                .hasMessageContainingAll("You chose postcodes of a country", "daily minima");
    }

    @Test
    void the_watch_can_end_the_reading_in_the_middle() {
        UploadedFile file =
                Found.file(folder, "garden.csv", nights().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        Found found = new Found();

        assertThatThrownBy(() -> ImportReader.read(
                        new ImportReader.Order(
                                ImportKind.NIGHTS, List.of(file), new TypedPlace(46, -92, 180), "", folder),
                        found,
                        (bytes, rows) -> {
                            if (bytes > 10_000) {
                                throw new ReadingCancelled();
                            }
                        }))
                .isInstanceOf(ReadingCancelled.class);
        assertThat(found.stations).isEmpty();
    }

    private FileRecognition.Told told(String text, @org.jspecify.annotations.Nullable ImportKind chosen)
            throws IOException {
        return FileRecognition.tell(
                List.of(Found.file(folder, "sent", text.getBytes(java.nio.charset.StandardCharsets.UTF_8))), chosen);
    }

    static String postcode(String country, String code, String place, String latitude, String longitude) {
        return String.join("\t", country, code, place, "Scotland", "SCT", "", "", "", "", latitude, longitude, "4")
                + "\n";
    }

    /** Twelve years of a place with frost from 5 October to 10 May and on no other day. */
    static String nights() {
        StringBuilder text = new StringBuilder("date,tmin\n");
        for (LocalDate day = LocalDate.of(2010, 1, 1); day.getYear() < 2022; day = day.plusDays(1)) {
            boolean summer = day.isAfter(day.withMonth(5).withDayOfMonth(10))
                    && day.isBefore(day.withMonth(10).withDayOfMonth(5));
            text.append(day).append(summer ? ",12.5\n" : ",-4.0\n");
        }
        return text.toString();
    }
}
