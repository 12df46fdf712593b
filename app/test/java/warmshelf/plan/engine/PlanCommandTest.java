package warmshelf.plan.engine;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.CommandRun;

class PlanCommandTest {
    private static final String GOOD = """
        {"days":{"from":"2027-02-01","to":"2027-06-01"},
         "circuits":[{"id":"c1","amps":15,"volts":120}],
         "mats":[{"id":"m1","places":1,"minC":20,"maxC":32,"watts":107,"circuit":"c1",
                  "out":[{"from":"2027-05-01","to":"2027-05-03"}]}],
         "fixed":[{"id":"f1","mat":"m1","place":1,"quarters":[1,2],"from":"2027-01-20","to":"2027-02-05","bandC":[24,30]},
                  {"id":"f2","mat":"m1","place":1,"quarters":[3],"from":"2027-02-01","to":"2027-02-05","bandC":[20,26]}],
         "requests":[
          {"id":"r1","member":"a","choice":1,"quarters":4,"days":14,"earliest":"2027-02-01","ideal":"2027-02-03",
           "latest":"2027-02-08","bandC":[24,30]},
          {"id":"r2","member":"b","choice":1,"quarters":4,"daysAtC":{"27":10},"earliest":"2027-02-04","ideal":"2027-02-04",
           "latest":"2027-02-07","bandC":[24,30]},
          {"id":"r3","member":"c","choice":1,"quarters":1,"days":5,"earliest":"2027-03-01","ideal":"2027-03-01",
           "latest":"2027-03-01","bandC":[10,15]}]}
        """;

    @TempDir
    private Path folder;

    @Test
    void a_plan_has_the_documented_fields_and_passes_the_check() throws IOException {
        Path file = write("season.json", GOOD);

        CommandRun run = CommandRun.of("plan", file.toString(), "--seconds", "2");

        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        JsonNode plan = run.json();
        assertThat(plan.path("placed")).hasSize(1);
        assertThat(plan.at("/placed/0/quarters").toString()).isEqualTo("[1,2,3,4]");
        assertThat(plan.at("/placed/0/request").asText()).isEqualTo("r2");
        assertThat(plan.path("placedAtMost").asInt()).isEqualTo(1);
        assertThat(plan.path("optimal").isBoolean()).isTrue();
        assertThat(plan.path("shiftDays").asInt()).isEqualTo(1);
        assertThat(plan.path("seconds").isNumber()).isTrue();
        Path answer = write("plan.json", run.out());
        CommandRun check = CommandRun.of("plan-check", file.toString(), answer.toString());
        assertThat(check.json().toString()).isEqualTo("{\"valid\":true,\"problems\":[]}");
        assertThat(check.status()).isZero();
    }

    @Test
    void refusals_say_the_true_reason_and_the_cheapest_change() throws IOException {
        JsonNode refused = CommandRun.of("plan", write("season.json", GOOD).toString(), "--seconds", "2")
                .json()
                .path("refused");

        assertThat(refused.path(0).path("reason").asText())
                .isEqualTo("All mats warm enough for it are taken from 1 February to 21 February.");
        assertThat(refused.path(0).path("change").asText())
                .isEqualTo("Start on 15 February, 7 days later than its latest day.");
        assertThat(refused.path(1).path("reason").asText()).startsWith("No mat can be set to 10–15 °C");
        assertThat(refused.path(1).path("change").asText()).startsWith("Join the waiting list");
    }

    @Test
    void light_for_seed_is_read_kept_and_checked() throws IOException {
        String needs = GOOD.replace("\"member\":\"b\",", "\"member\":\"b\",\"needsLight\":true,");
        String dark = needs.replace("\"circuit\":\"c1\",\n", "\"circuit\":\"c1\",\"light\":\"none\",\n");
        String lit = needs.replace("\"circuit\":\"c1\",\n", "\"circuit\":\"c1\",\"light\":\"daylight\",\n");
        Path inLight = write("lit.json", lit);
        Path inTheDark = write("dark.json", dark);

        CommandRun planned = CommandRun.of("plan", inLight.toString(), "--seconds", "2");
        Path answer = write("plan.json", planned.out());

        assertThat(planned.json().at("/placed/0/request").asText()).isEqualTo("r2");
        assertThat(CommandRun.of("plan-check", inLight.toString(), answer.toString())
                        .status())
                .isZero();
        assertThat(CommandRun.of("plan-check", inTheDark.toString(), answer.toString())
                        .json()
                        .path("problems")
                        .path(0)
                        .asText())
                .contains("needs light");
        assertThat(CommandRun.of("plan", inTheDark.toString(), "--seconds", "2")
                        .json()
                        .at("/placed/0/request")
                        .asText())
                .isEqualTo("r1");
        Path wrong = write("wrong.json", lit.replace("daylight", "bright"));
        assertThat(CommandRun.of("plan", wrong.toString()).err())
                .contains("'light' was 'bright'; lamp, daylight or none is accepted");
    }

    @Test
    void a_plan_that_breaks_a_rule_ends_with_status_1() throws IOException {
        Path file = write("season.json", GOOD);
        Path plan = write("plan.json", "{\"placed\":[],\"setPoints\":[],\"refused\":[]}");

        CommandRun run = CommandRun.of("plan-check", file.toString(), plan.toString());

        assertThat(run.status()).isEqualTo(1);
        assertThat(run.json().path("valid").asBoolean()).isFalse();
        assertThat(run.json().path("problems")).hasSizeGreaterThanOrEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"latest\":\"2027-02-08\" | \"latest\":\"2027-01-08\" | 'latest' was 2027-01-08, before 'earliest'",
                "\"ideal\":\"2027-02-03\" | \"ideal\":\"2027-05-03\" | 'ideal' was 2027-05-03",
                "\"quarters\":[3] | \"quarters\":[2] | both lie on quarter 2 of place 1",
                "\"quarters\":[3] | \"quarters\":[2,3] | 'quarters' was [2,3]",
                "\"bandC\":[20,26] | \"bandC\":[20,23] | No set-point of the mat 'm1' suits the fixed stay 'f2'",
                "\"bandC\":[20,26] | \"bandC\":[26,20] | the lower one first",
                "\"id\":\"r2\" | \"id\":\"r1\" | The id 'r1' stands twice",
                "\"quarters\":4 | \"quarters\":3 | 'quarters' was 3",
                "\"quarters\":4 | \"quarters\":4.5 | 'quarters' was 4.5",
                "\"days\":14 | \"days\":-1 | 'days' was -1",
                "\"days\":14, | `` | neither 'days' nor 'daysAtC'",
                "\"member\":\"a\" | \"membre\":\"a\" | a field 'membre' that is not known",
                "\"circuit\":\"c1\" | \"circuit\":\"c2\" | a circuit 'c2' that 'circuits' does not list",
                "\"amps\":15 | \"amps\":0.5 | load the circuit 'c1' with 107 watts",
                "\"to\":\"2027-06-01\" | \"to\":\"2027-01-01\" | not after 'from'",
                "\"to\":\"2027-06-01\" | \"to\":\"soon\" | 'to' was \"soon\"",
                "\"mat\":\"m1\" | \"mat\":\"m7\" | lies on 'm7'",
                "\"places\":1 | \"places\":0 | 'places' was 0",
                "{\"days\" | days | is not JSON"
            })
    void what_cannot_be_meant_is_refused_with_a_sentence(String good, String bad, String words) throws IOException {
        assertThat(GOOD).contains(good);
        Path file = write("season.json", GOOD.replaceFirst(Pattern.quote(good), bad));

        CommandRun run = CommandRun.of("plan", file.toString());

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).hasLineCount(1).contains(words).doesNotContain("Exception");
    }

    @ParameterizedTest
    @CsvSource({
        "--seconds 0, --seconds was '0'",
        "--seed x, --seed was 'x'",
        "--baseline best, --baseline was 'best'",
        "--wrong 1, Unknown option"
    })
    void options_that_cannot_be_used_are_refused_with_a_sentence(String options, String words) throws IOException {
        String[] parts = options.split(" ", -1);

        CommandRun run = CommandRun.of("plan", write("season.json", GOOD).toString(), parts[0], parts[1]);

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).hasLineCount(1).contains(words);
    }

    @Test
    void a_file_that_is_not_there_is_refused_with_a_sentence() {
        CommandRun run = CommandRun.of("plan", folder.resolve("none.json").toString());

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).hasLineCount(1).contains("cannot be read");
    }

    @Test
    void ten_thousand_requests_get_a_plan() throws IOException {
        StringBuilder requests = new StringBuilder();
        for (int i = 0; i < 10_000; i++) {
            requests.append(i == 0 ? "" : ",")
                    .append("""
                        {"id":"r%d","member":"m%d","quarters":%d,"days":%d,"earliest":"2027-02-01","ideal":"2027-03-01",
                         "latest":"2027-04-%02d","bandC":[%d,30]}\
                        """.formatted(i, i, 1 << (i % 3), 5 + i % 9, 1 + i % 28, 20 + i % 8));
        }
        String all = GOOD.substring(0, GOOD.indexOf("\"requests\"")) + "\"requests\":[" + requests + "]}";

        CommandRun run = CommandRun.of("plan", write("large.json", all).toString(), "--seconds", "2");

        assertThat(run.status()).isZero();
        assertThat(run.json().path("placed").size() + run.json().path("refused").size())
                .isEqualTo(10_000);
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
