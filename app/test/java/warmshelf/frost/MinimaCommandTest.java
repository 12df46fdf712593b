package warmshelf.frost;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.CommandRun;

class MinimaCommandTest {
    @TempDir
    private Path folder;

    @Test
    void a_record_of_twenty_years_is_answered_with_the_documented_fields() throws IOException {
        JsonNode answer = run("--season", "2027", "--latitude", "46.8").json();

        assertThat(answer.fieldNames())
                .toIterable()
                .contains(
                        "evidence",
                        "place",
                        "latitude",
                        "longitude",
                        "elevationM",
                        "spring",
                        "autumn",
                        "stations",
                        "notes");
        assertThat(answer.get("evidence").asText()).isEqualTo("daily-minima");
        assertThat(answer.get("latitude").asDouble()).isEqualTo(46.8);
        JsonNode spring = answer.get("spring");
        assertThat(spring.fieldNames())
                .toIterable()
                .startsWith(
                        "seasons",
                        "seasonsWithFrost",
                        "anyFrost",
                        "p50",
                        "p30",
                        "p10",
                        "p90",
                        "sdDays",
                        "latest",
                        "earliest");
        assertThat(spring.get("seasons").asInt()).isEqualTo(20);
        assertThat(spring.get("anyFrost").asDouble()).isEqualTo(1);
        // last frosts on 1 to 20 May, one a year: half of them after the 10th
        assertThat(spring.get("p50").asText()).isBetween("2027-05-10", "2027-05-11");
        assertThat(spring.get("p10").asText()).isBetween("2027-05-18", "2027-05-19");
        assertThat(spring.get("latest").asText()).isEqualTo("05-20");
        assertThat(spring.get("earliest").asText()).isEqualTo("05-01");
        assertThat(answer.get("autumn").get("p50").asText()).isEqualTo("2027-10-01");
    }

    @Test
    void a_record_without_frost_is_answered_with_nulls() throws IOException {
        JsonNode answer = run("--threshold", "-30").json();

        assertThat(answer.get("spring").get("seasonsWithFrost").asInt()).isZero();
        assertThat(answer.get("spring").get("p10").isNull()).isTrue();
        assertThat(answer.get("spring").get("latest").isNull()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "--format,parquet,parquet",
        "--threshold,mild,mild",
        "--latitude,95,95",
        "--format,ghcn-dly,GHCN-Daily",
        "--at,'46.8,-92.1,180',one of them"
    })
    void an_option_that_cannot_be_used_is_refused_in_a_sentence(String option, String value, String named)
            throws IOException {
        CommandRun run = run(option, value);

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(named);
    }

    @Test
    void a_threshold_without_a_file_is_refused() {
        CommandRun run = CommandRun.of("frost", "55811", "--threshold", "-2.2");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("--minima");
    }

    /** Last frosts on 1 May 2001, 2 May 2002 and so on to 20 May 2020; first ones always on 1 October. */
    private CommandRun run(String... options) throws IOException {
        StringBuilder text = new StringBuilder("date,tmin\n");
        for (LocalDate day = LocalDate.of(2001, 1, 1); day.getYear() < 2021; day = day.plusDays(1)) {
            boolean frost = day.equals(LocalDate.of(day.getYear(), 5, day.getYear() - 2000))
                    || day.equals(LocalDate.of(day.getYear(), 10, 1));
            text.append(day).append(frost ? ",-1.0\n" : ",6.0\n");
        }
        Path file = Files.writeString(folder.resolve("garden.csv"), text);
        String[] arguments = new String[3 + options.length];
        arguments[0] = "frost";
        arguments[1] = "--minima";
        arguments[2] = file.toString();
        System.arraycopy(options, 0, arguments, 3, options.length);
        return CommandRun.of(arguments);
    }
}
