package warmshelf.frost.minima;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Four years of NOAA's daily minima at Seattle and New York (from the openly licensed vega-datasets, see frost/SOURCE.md).
 * The dates were picked from the file by a separate one-line program, not by this one.
 */
class OpenRecordsTest {
    @Test
    void seattles_last_and_first_frosts_are_found() throws IOException {
        FrostRecord record = FrostRecord.of(read("daily-minima-seattle.csv"), 47.45, 0);

        assertThat(days(record.spring()))
                .containsExactly(
                        LocalDate.of(2012, 3, 19),
                        LocalDate.of(2013, 3, 4),
                        LocalDate.of(2014, 2, 9),
                        LocalDate.of(2015, 3, 4));
        assertThat(days(record.autumn()))
                .containsExactly(
                        LocalDate.of(2012, 11, 10),
                        LocalDate.of(2013, 11, 21),
                        LocalDate.of(2014, 11, 12),
                        LocalDate.of(2015, 11, 23));
    }

    @Test
    void new_yorks_last_and_first_frosts_are_found() throws IOException {
        FrostRecord record = FrostRecord.of(read("daily-minima-new-york.csv"), null, 0);

        assertThat(days(record.spring()))
                .containsExactly(
                        LocalDate.of(2012, 3, 27),
                        LocalDate.of(2013, 4, 4),
                        LocalDate.of(2014, 4, 16),
                        LocalDate.of(2015, 3, 29));
        assertThat(days(record.autumn()))
                .containsExactly(
                        LocalDate.of(2012, 11, 6),
                        LocalDate.of(2013, 11, 12),
                        LocalDate.of(2014, 11, 15),
                        LocalDate.of(2015, 11, 24));
    }

    @Test
    void a_killing_frost_in_seattle_comes_no_later_in_spring_than_any_frost() throws IOException {
        FrostRecord record = FrostRecord.of(read("daily-minima-seattle.csv"), 47.45, -2.2);

        assertThat(days(record.spring()))
                .containsExactly(
                        LocalDate.of(2012, 2, 27),
                        LocalDate.of(2013, 1, 17),
                        LocalDate.of(2014, 2, 7),
                        LocalDate.of(2015, 1, 1));
    }

    private static List<LocalDate> days(FrostSide side) {
        return side.seasons().stream().map(SeasonFrost::day).toList();
    }

    private static StationMinima read(String file) throws IOException {
        try (InputStream stream = OpenRecordsTest.class.getResourceAsStream("/frost/" + file)) {
            assertThat(stream).isNotNull();
            return MinimaFile.read(stream, file, null);
        }
    }
}
