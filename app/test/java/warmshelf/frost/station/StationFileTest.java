package warmshelf.frost.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.BadInput;

class StationFileTest {
    private static final String HEADING =
            "station,station_id,latitude,longitude,elevation_m,spring_p50,spring_p90,autumn_p50,autumn_p90\n";

    @TempDir
    private Path folder;

    @Test
    void dates_are_counted_through_the_season_that_they_belong_to() throws IOException {
        List<StationFrost> stations = read(HEADING
                + "LAKESIDE,S1,46.8,-92.1,180,05-14,05-01,10-01,10-15\n"
                + "WARM BAY,S2,27.0,-82.1,3,01-20,12-28,12-20,01-30\n"
                + "FAR SOUTH,S3,-43.5,172.6,20,10-20,10-01,05-05,05-25\n"
                + "PALM KEY,S4,24.5,-81.8,1,,,,\n");

        assertThat(stations.get(0).days(Side.SPRING).medianDay()).isEqualTo(134);
        assertThat(stations.get(0).days(Side.AUTUMN).medianDay()).isEqualTo(274);
        // 28 December is before the spring's own year begins, 30 January after the autumn's ended
        assertThat(stations.get(1).days(Side.SPRING).ninthDay()).hasValue(362 - 365);
        assertThat(stations.get(1).days(Side.AUTUMN).ninthDay()).hasValue(30 + 365);
        // the southern autumn is the one after the spring
        assertThat(stations.get(2).days(Side.SPRING).medianDay()).isEqualTo(293);
        assertThat(stations.get(2).days(Side.AUTUMN).medianDay()).isEqualTo(365 + 125);
        assertThat(stations.get(3).hasDates()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A,S1,96,-92.1,180,05-14,,10-01,|Line 2|latitude was '96'",
                "A,S1,46.8,-92.1,,05-14,,10-01,|Line 2|elevation_m was ''",
                "A,S1,46.8,-92.1,180,14 May,,10-01,|Line 2|spring_p50 was '14 May'",
                "A,S1,46.8,-92.1,180,05-14,,,|Line 2|autumn_p50 was ''",
                "A,S1,46.8,-92.1,180,02-30,,10-01,|Line 2|02-30",
                "A,S1,46.8|Line 2|columns",
                "A,S1,46.8,-92.1,180,,,,|no station|frost dates",
            })
    void a_row_that_cannot_be_understood_is_named_and_nothing_is_taken(String row, String line, String given) {
        assertThatThrownBy(() -> read(HEADING + row + "\n"))
                .isInstanceOf(BadInput.class)
                .hasMessageContainingAll(line, given);
    }

    @Test
    void a_page_saved_in_place_of_the_file_is_refused() {
        assertThatThrownBy(() -> read("<html>\n<title>404</title>\n"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("latitude");
    }

    private List<StationFrost> read(String text) throws IOException {
        return StationFile.read(Files.writeString(folder.resolve("stations.csv"), text));
    }
}
