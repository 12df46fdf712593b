package warmshelf.frost.minima;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.BadInput;

/** The layouts are those of the GHCN-Daily readme (NOAA/NCEI), sections on .dly and on the by-station .csv files. */
class MinimaFileTest {
    private static final LocalDate FIRST = LocalDate.of(2021, 3, 1);

    private static final String ROWS = """
            USC00219999,20210301,TMAX,72,,,7,0700
            USC00219999,20210301,TMIN,-25,,,7,0700
            USC00219999,20210302,TMIN,400,,I,7,0700
            USC00219999,20210303,TMIN,11,,,7,
            """;

    private static final String TABLE = """
            "STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","PRCP","PRCP_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"
            "USC00219999","2021-03-01","46.8","-92.1","180.0","LAKESIDE, MN US","    3",",,7,0700","  -25",",,7,0700"
            "USC00219999","2021-03-02","46.8","-92.1","180.0","LAKESIDE, MN US",,,"  400",",I,7,0700"
            "USC00219999","2021-03-03","46.8","-92.1","180.0","LAKESIDE, MN US",,,"   11",",,7"
            "USC00219999","2021-03-04","46.8","-92.1","180.0","LAKESIDE, MN US",,,,
            """;

    private static String fixedWidth() {
        return "USC00219999202103TMAX" + "   72  7".repeat(31) + "\n" + "USC00219999202103TMIN" + "  -25  7"
                + "  400 I7" + "   11  7" + "-9999   ".repeat(28) + "\n";
    }

    @Test
    void the_three_layouts_of_the_service_give_the_same_days() {
        for (String text : new String[] {
            ROWS,
            "ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME\n" + ROWS,
            TABLE,
            fixedWidth(),
            fixedWidth().stripTrailing()
        }) {
            StationMinima station = read(text);

            assertThat(station.station()).isEqualTo("USC00219999");
            assertThat(station.minima().size()).as(text).isEqualTo(2);
            assertThat(station.minima().on(FIRST)).hasValue(-2.5);
            assertThat(station.minima().on(FIRST.plusDays(1)))
                    .as("the service doubts it")
                    .isEmpty();
            assertThat(station.minima().on(FIRST.plusDays(2))).hasValue(1.1);
            assertThat(station.doubted()).isEqualTo(1);
        }
    }

    @Test
    void the_table_tells_where_its_station_lies() {
        assertThat(read(TABLE).point()).isEqualTo(new StationPoint("LAKESIDE, MN US", 46.8, -92.1, 180.0));
    }

    @Test
    void a_plain_file_is_read_in_either_unit_and_any_order_of_columns() {
        StationMinima celsius = read("date,tmin\n2021-03-01,-2.5\n2021-03-02,\n2021-03-03,1.1\n");
        StationMinima fahrenheit = read("tmin_f,weather,date\r\n28,\"snow, rain\",2021-03-01\r\n36,,2021-03-03\r\n");

        assertThat(celsius.minima().on(FIRST)).hasValue(-2.5);
        assertThat(celsius.minima().size()).isEqualTo(2);
        // the services' pair of thresholds: 28 F is -2.2 C, 36 F is 2.2 C
        assertThat(fahrenheit.minima().on(FIRST)).hasValue(-2.2);
        assertThat(fahrenheit.minima().on(FIRST.plusDays(2))).hasValue(2.2);
    }

    @Test
    void a_file_packed_with_gzip_is_read(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("USC00219999.csv.gz");
        try (OutputStream packed = new GZIPOutputStream(Files.newOutputStream(file))) {
            packed.write(ROWS.getBytes(StandardCharsets.UTF_8));
        }

        assertThat(MinimaFile.read(file, null).minima().size()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "date,tmin;2021-03-01,300|Line 2|300 °C|units",
                "date,tmin_f;2021-03-01,300|Line 2|300 °F|units",
                "date,tmin;2021-03-01,-1;3.5,2021-03-02|Line 3|'3.5'|date",
                "date,tmin;2021-03-01,-1;2021-03-02,cold|Line 3|'cold'|number",
                "date,tmin;2021-03-01,NaN|Line 2|'NaN'|number",
                "date,tmin;2021-03-01,-1;2021-03-01,-1|Line 3|2021-03-01|already",
                "date,tmin;03-14,-1|Line 2|'03-14'|year",
                "date,tmin;2021-02-29,-1|Line 2|2021-02-29|no day",
                "date,tmin;0021-02-28,-1|Line 2|0021-02-28|no day",
                "date,tmin;2021-03-01,-1,5,6|Line 2|4 columns|2",
                "date,tmin,tmin_f;2021-03-01,-1,30|line 1|date,tmin,tmin_f|Accepted",
                "some words;and more|line 1|some words|Accepted",
                "<!DOCTYPE html>;<title>404 Not Found</title>|line 1|DOCTYPE|web site",
                "date,tmin|'test'|no daily minimum|in it",
                "USC00219999,20210301,TMIN,-25,,,7,0700;USC00210000,20210302,TMIN,-25,,,7,0700|Line 2|USC00210000|one station",
                "USC00219999,20210301,TMIN,-2.5,,,7,0700|Line 1|'-2.5'|tenths",
                "USC00219999,20210301,TMIN,900,,,7,0700|Line 1|900 tenths|units",
                "USC00219999202103TMIN  -25  7  -25  7|Line 1|2021-03|day 3",
            })
    void a_file_that_cannot_be_used_is_refused_by_line(String text, String line, String given, String accepted) {
        assertThatThrownBy(() -> read(text.replace(';', '\n')))
                .isInstanceOf(BadInput.class)
                .hasMessageContainingAll(line, given, accepted)
                .satisfies(refusal -> assertThat(refusal.getMessage()).endsWith("."));
    }

    @Test
    void five_mistakes_are_named_and_the_rest_is_not_looked_at() {
        assertThatThrownBy(() -> read("date,tmin\n" + "x,1\n".repeat(100)))
                .hasMessageContaining("Line 6")
                .hasMessageNotContaining("Line 7")
                .hasMessageContaining("not looked at");
    }

    @Test
    void a_layout_asked_for_is_not_guessed() {
        assertThatThrownBy(() -> read(ROWS, MinimaLayout.PLAIN)).hasMessageContaining("date,tmin");
        assertThat(read(ROWS, MinimaLayout.GHCN_CSV).minima().size()).isEqualTo(2);
    }

    @Test
    void a_file_without_line_ends_does_not_fill_the_memory() {
        assertThatThrownBy(() -> read("x".repeat(30_000)))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("20,000");
    }

    private static StationMinima read(String text) {
        return read(text, null);
    }

    private static StationMinima read(String text, @Nullable MinimaLayout layout) {
        try {
            return MinimaFile.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "test", layout);
        } catch (IOException impossible) {
            throw new AssertionError("text in memory can be read", impossible);
        }
    }
}
