package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.testing.CommandRun;
import warmshelf.testing.Everything;

class FrostCheckCommandTest {
    @TempDir
    private Path folder;

    /** NOAA/NCEI 1981-2010 US Climate Normals; each of 4,913 stations is told from the others. */
    @Test
    void on_the_published_dates_of_the_united_states_every_way_of_ours_beats_the_nearest_station() {
        Path stations = Everything.reference("frost-stations-noaa.csv");
        Path months = Everything.reference("monthly-minima-noaa.csv");
        Everything.require(Files.exists(stations) && Files.exists(months), "the files of published station dates");

        JsonNode answer = CommandRun.of(
                        "frost-check", "--stations", stations.toString(), "--monthly-minima", months.toString())
                .json();

        JsonNode median = answer.get("medianAbsErrorDays");
        JsonNode nineTenths = answer.get("p90AbsErrorDays");
        System.out.println("leave-one-out over published stations: " + answer);
        assertThat(answer.get("stations").asInt()).isEqualTo(4913);
        assertThat(median.get("nearestUnadjusted").asDouble()).isBetween(4.9, 5.1);
        for (String way : new String[] {"surface", "stations", "hopkins"}) {
            assertThat(median.get(way).asDouble()).as(way).isLessThan(4.3);
            assertThat(nineTenths.get(way).asDouble()).as(way).isLessThan(13.2);
        }
        assertThat(median.get("stations").asDouble())
                .isLessThan(median.get("hopkins").asDouble());
        assertThat(answer.get("monthlyMinima").get("stations").asInt()).isGreaterThan(4900);
        assertThat(answer.get("monthlyMinima").get("medianAbsErrorDays").asDouble())
                .isLessThan(3.2);
    }

    @Test
    void the_documented_fields_are_there_without_monthly_minima_too() throws IOException {
        JsonNode answer = CommandRun.of("frost-check", "--stations", country(60).toString())
                .json();

        assertThat(answer.fieldNames())
                .toIterable()
                .contains("stations", "medianAbsErrorDays", "p90AbsErrorDays", "monthlyMinima");
        assertThat(answer.get("medianAbsErrorDays").fieldNames())
                .toIterable()
                .containsExactly("surface", "stations", "hopkins", "nearestUnadjusted");
        assertThat(answer.get("monthlyMinima").isNull()).isTrue();
    }

    @Test
    void nine_stations_are_too_few() throws IOException {
        CommandRun run = CommandRun.of("frost-check", "--stations", country(9).toString());

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("9 stations", "at least 10");
    }

    @Test
    void a_grid_is_fitted_in_the_bundled_surfaces_own_layout() throws IOException {
        Path grid = folder.resolve("grid.csv");

        CommandRun run = CommandRun.of(
                "frost-surface", "--stations", country(120).toString(), "--out", grid.toString(), "--cell", "0.5");

        JsonNode answer = run.json();
        assertThat(answer.get("stations").asInt()).isEqualTo(120);
        assertThat(answer.get("heldOut").get("stations").asInt()).isEqualTo(12);
        assertThat(answer.get("heldOut").get("medianAbsErrorDays").asDouble()).isBetween(0.5, 8.0);
        assertThat(Files.readAllLines(grid))
                .hasSize(answer.get("cells").asInt() + 1)
                .startsWith(Files.readAllLines(Path.of("db/reference/frost-surface-us.csv"))
                        .get(0))
                // at 42.5 north, 2.5 east on a plane at 300 m: 110 + 4 x 0.5 days
                .anySatisfy(row -> {
                    assertThat(row).startsWith("42.5,2.5,");
                    assertThat(Double.parseDouble(row.split(",", -1)[3])).isBetween(108.0, 116.0);
                });
    }

    @Test
    void stations_given_for_a_point_are_named_with_what_was_done_to_them() throws IOException {
        JsonNode answer = CommandRun.of(
                        "frost",
                        "--at",
                        "42.5,2.5,300",
                        "--stations",
                        country(120).toString(),
                        "--season",
                        "2027")
                .json();

        assertThat(answer.get("evidence").asText()).isEqualTo("stations");
        assertThat(answer.get("spring").get("p50").asText()).isBetween("2027-04-18", "2027-04-27");
        assertThat(answer.get("stations").get(0).fieldNames())
                .toIterable()
                .containsExactly("name", "distanceKm", "elevationM", "weight", "adjustmentDays", "source");
    }

    @Test
    void monthly_means_are_answered_with_the_documented_fields() {
        JsonNode answer = CommandRun.of(
                        "frost",
                        "--monthly",
                        "-14,-12,-5,1,7,12,15,14,9,3,-4,-11",
                        "--at",
                        "46.8,-92.1,180",
                        "--season",
                        "2027")
                .json();

        assertThat(answer.get("evidence").asText()).isEqualTo("monthly-minima");
        assertThat(answer.get("spring").get("p10").asText())
                .isGreaterThan(answer.get("spring").get("p50").asText())
                .startsWith("2027-");
        assertThat(answer.get("spring").get("seasons").isNull()).isTrue();
    }

    @Test
    void eleven_months_and_words_are_refused() {
        CommandRun eleven = CommandRun.of("frost", "--monthly", "1,2,3,4,5,6,7,8,9,10,11", "--at", "46.8,-92.1,180");
        CommandRun words = CommandRun.of("frost", "--monthly", "a,2,3,4,5,6,7,8,9,10,11,12", "--at", "46.8,-92.1,180");
        CommandRun nowhere = CommandRun.of("frost", "--monthly", "1,2,3,4,5,6,7,8,9,10,11,12");

        assertThat(eleven.status()).isEqualTo(2);
        assertThat(eleven.err()).contains("11 numbers");
        assertThat(words.err()).contains("'a'");
        assertThat(nowhere.err()).contains("--at");
    }

    /** A plane at 300 m, five degrees wide, where spring comes four days later for each degree north. */
    private Path country(int stations) throws IOException {
        Random random = new Random(20270301);
        StringBuilder text = new StringBuilder(
                "station,latitude,longitude,elevation_m,spring_p50,spring_p90,autumn_p50,autumn_p90\n");
        for (int i = 0; i < stations; i++) {
            double latitude = 40 + 5 * random.nextDouble();
            long spring = Math.round(110 + 4 * (latitude - 42) + 3 * random.nextGaussian());
            text.append(String.format(
                    Locale.ROOT,
                    "Station %d,%.4f,%.4f,300,%s,%s,%s,%s%n",
                    i,
                    latitude,
                    5 * random.nextDouble(),
                    monthAndDay(spring),
                    monthAndDay(spring - 14),
                    monthAndDay(400 - spring),
                    monthAndDay(412 - spring)));
        }
        return Files.writeString(folder.resolve("country.csv"), text);
    }

    private static String monthAndDay(long day) {
        return YearDay.in(2027, (double) day).toString().substring(5);
    }
}
