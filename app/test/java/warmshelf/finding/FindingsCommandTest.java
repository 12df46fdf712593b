package warmshelf.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.testing.CommandRun;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.SeenSowings;

class FindingsCommandTest {
    private static final String HEADER = "arm,unit,last_without,first_with,status\n";
    // Freireich et al. 1963 as given by Gehan 1965; a minus marks those still in remission
    private static final int[] TREATED = {
        6, 6, 6, 7, 10, 13, 16, 22, 23, -6, -9, -10, -11, -17, -19, -20, -25, -32, -32, -34, -35
    };
    private static final int[] PLACEBO = {1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23};

    @TempDir
    private Path folder;

    /** Chi-square 16.8, p = 4.17e-05: R's survdiff, https://rstudio-pubs-static.s3.amazonaws.com/79128_036da04b5d9e4a20b30803e3f08363fe.html */
    @Test
    void exact_times_give_the_published_log_rank() throws IOException {
        JsonNode answer = findings(HEADER + weeks("6-MP", TREATED) + weeks("placebo", PLACEBO), "--exact-times")
                .json();

        assertThat(answer.at("/logRank/chiSquare").asDouble()).isCloseTo(16.793, within(0.001));
        assertThat(answer.at("/logRank/df").asInt()).isEqualTo(1);
        assertThat(answer.at("/logRank/p").asDouble()).isCloseTo(4.17e-5, within(1e-7));
        assertThat(answer.at("/arms/0/medianDays").asDouble()).isEqualTo(23);
        assertThat(answer.at("/arms/1/medianDays").asDouble()).isEqualTo(8);
        assertThat(answer.at("/arms/0/sprouted").asInt()).isEqualTo(9);
        assertThat(answer.at("/arms/0/seeds").asInt()).isEqualTo(21);
    }

    private static String weeks(String arm, int... weeks) {
        StringBuilder rows = new StringBuilder();
        for (int week : weeks) {
            rows.append("%s,p,,%d,%s%n".formatted(arm, Math.abs(week), week > 0 ? "sprouted" : "not"));
        }
        return rows.toString();
    }

    /** T50 of https://pgomba.github.io/seedTools/articles/coolbear_use.html : 8.6875. */
    @Test
    void daily_counts_give_the_documented_fields() throws IOException {
        int[] counts = {0, 0, 0, 0, 1, 2, 3, 1, 8, 1, 7, 2};
        StringBuilder rows = new StringBuilder(HEADER);
        for (int day = 1; day <= counts.length; day++) {
            rows.append("cells,t1,%d,%d,sprouted%n".formatted(day - 1, day).repeat(counts[day - 1]));
        }
        JsonNode answer = findings(rows.toString()).json();

        assertThat(answer.fieldNames())
                .toIterable()
                .startsWith("arms", "logRank")
                .contains("words");
        JsonNode arm = answer.at("/arms/0");
        assertThat(arm.fieldNames())
                .toIterable()
                .contains("arm", "seeds", "sprouted", "share", "medianDays", "t50", "meanGerminationTime", "curve");
        assertThat(arm.get("t50").asDouble()).isCloseTo(8.6875, within(1e-6));
        assertThat(arm.at("/share/exactLow").asDouble()).isCloseTo(0.8628, within(0.0001)); // 25 of 25
        assertThat(answer.get("logRank").isNull()).isTrue();
        assertThat(answer.get("words").asText()).contains("nothing to compare");
    }

    @Test
    void bags_four_days_faster_are_said_so_first() throws IOException {
        StringBuilder rows = new StringBuilder(HEADER);
        for (int seed = 0; seed < 20; seed++) {
            rows.append("bag,b,%d,%d,sprouted%n".formatted(5 + seed % 4, 6 + seed % 4));
            rows.append("cells,c,%d,%d,sprouted%n".formatted(9 + seed % 4, 10 + seed % 4));
        }
        rows.append("bag,b,20,,not\ncells,c,20,,not\n");
        JsonNode answer = findings(rows.toString()).json();

        assertThat(answer.get("words").asText())
                .startsWith("With bag it was about 4 days faster than with cells:")
                .contains("Shares did not differ beyond chance: 20 of 21 (95 %) with bag, 20 of 21 (95 %) with cells.");
        assertThat(answer.at("/logRank/permutationP").asDouble()).isLessThan(0.001);
        assertThat(answer.at("/daysLater/value").asDouble()).isCloseTo(-4, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bag,1,5,6,up|status in row 1 was 'up'; sprouted or not is accepted.",
                "bag,1,7,6,sprouted|first_with in row 1 was '6'; a day after last_without, 7 is accepted.",
                "bag,1,6,6,sprouted|first_with in row 1 was '6'; a day after last_without, 6 is accepted.",
                "bag,1,x,6,sprouted|last_without in row 1 was 'x'; a number from 0 to 10000 is accepted.",
                "bag,1,-1,6,sprouted|last_without in row 1 was '-1'; a number from 0 to 10000 is accepted.",
                "bag,1,,6,sprouted|last_without in row 1 was ''; a number from 0 to 10000 is accepted.",
                ",1,5,6,sprouted|arm in row 1 was 'empty'; the name of a way is accepted.",
                "bag,1,5|the row in row 1 was '3 cells'; as many cells as the first line has is accepted."
            })
    void what_cannot_be_used_is_named(String row, String sentence) throws IOException {
        CommandRun run = findings(HEADER + row + "\n");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains(sentence);
    }

    @Test
    void a_file_without_rows_columns_or_utf_8_is_refused() throws IOException {
        assertThat(findings(HEADER).err()).contains("it has no seed, at least one row is needed");
        assertThat(findings("").err()).contains("without the column arm");
        assertThat(findings("arm;unit\nbag;1\n").err()).contains("without the column arm");
        Path latin = Files.write(
                folder.resolve("latin.csv"),
                (HEADER + "tüte,1,5,6,sprouted\n").getBytes(Charset.forName("ISO-8859-1")));
        assertThat(CommandRun.of("findings", latin.toString()).err()).contains("a table in UTF-8 is accepted");
        assertThat(CommandRun.of("findings", folder.resolve("none.csv").toString())
                        .err())
                .contains("there is no such file");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bag,1,3,4,sprouted;bag,2,9,,not | There is one way only, bag, so there is nothing to compare it with: 1 of 2 (50 %)",
                "bag,1,3,4,sprouted;tray,1,7,8,sprouted | Of bag there is a single seed, which tells nothing of a way",
                "bag,1,9,,not;bag,2,9,,not;tray,1,9,,not;tray,2,9,,not | Nothing sprouted, so there is nothing to compare."
            })
    void what_would_mislead_is_withheld_and_the_reason_said(String rows, String sentence) throws IOException {
        JsonNode answer = findings(HEADER + rows.replace(";", "\n") + "\n").json();

        assertThat(answer.get("words").asText()).startsWith(sentence).doesNotContain("p = ");
        assertThat(answer.get("logRank").isNull()).isTrue();
        assertThat(answer.get("daysLater").isNull()).isTrue();
    }

    @Test
    void gaps_of_weeks_and_one_way_under_two_names_are_said() throws IOException {
        JsonNode weeks = findings(HEADER + "bag,1,0,21,sprouted\n" + "bag,2,0,21,sprouted\n" + "tray,1,7,8,sprouted\n"
                        + "tray,2,8,9,sprouted\n")
                .json();
        JsonNode names = findings(HEADER + "bag,1,3,4,sprouted\n" + "bag,2,3,4,sprouted\n" + "Bag,3,3,4,sprouted\n"
                        + "Bag,4,4,5,sprouted\n")
                .json();

        assertThat(weeks.get("words").asText()).contains("Two weeks or more lie between two looks while seed came");
        assertThat(names.get("words").asText())
                .contains("bag and Bag are taken for two ways; if they are one, give them one name.");
    }

    @Test
    void a_season_is_printed_as_on_its_page() {
        try (Database database = Database.inFolder(folder)) {
            Audit audit = new Audit(Clock.fixed(Instant.parse("2027-03-01T15:00:00Z"), ZoneOffset.UTC));
            SeenSowings seen = new SeenSowings(database, audit, new GrowRoom(database, audit));
            seen.upOnDay(9, seen.lot());
        }

        JsonNode season = CommandRun.of("findings", "--data", folder.toString(), "--season", "2027")
                .json();

        assertThat(season.at("/totals/came").asInt()).isEqualTo(10);
        assertThat(season.at("/crops/0/share/of").asInt()).isEqualTo(12);
        assertThat(season.at("/kilowattHoursAtMost").asDouble()).isCloseTo(21 * 24 * 0.045, within(1e-9));
        assertThat(season.get("words").asText()).contains("10 came: 83 in 100.");
    }

    @Test
    void a_file_and_a_folder_at_once_or_half_a_question_are_refused() {
        assertThat(CommandRun.of("findings").err()).contains("Either FILE");
        assertThat(CommandRun.of("findings", "--data", folder.toString()).err()).contains("Either FILE");
        assertThat(CommandRun.of("findings", "x.csv", "--data", folder.toString(), "--season", "2027")
                        .status())
                .isEqualTo(2);
        assertThat(CommandRun.of("findings", "--data", folder.toString(), "--season", "2027")
                        .err())
                .contains("holds no group's data");
        assertThat(CommandRun.of("findings", "--data", folder.toString(), "--season", "next")
                        .err())
                .contains("--season was 'next'; a whole number from 2,000 to 2,099 is accepted.");
    }

    private CommandRun findings(String table, String... options) throws IOException {
        Path file = Files.writeString(folder.resolve("seeds.csv"), table, StandardCharsets.UTF_8);
        String[] words = new String[options.length + 2];
        words[0] = "findings";
        words[1] = file.toString();
        System.arraycopy(options, 0, words, 2, options.length);
        return CommandRun.of(words);
    }
}
