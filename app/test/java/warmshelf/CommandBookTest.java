package warmshelf;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import warmshelf.handbook.CommandWords;
import warmshelf.testing.Browser;
import warmshelf.testing.CommandRun;
import warmshelf.testing.TestGroup;

/** What the handbook says of options and commands is what their help says, and that is true. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CommandBookTest {
    private TestGroup group;
    private Browser coordinator;

    @BeforeAll
    void open() {
        group = TestGroup.open();
        coordinator = group.signedIn(group.coordinator());
    }

    @AfterAll
    void close() {
        group.close();
    }

    @Test
    void the_page_of_options_says_of_each_what_help_says() {
        String help = plain(CommandRun.of("serve", "--help").out());
        String page = plain(coordinator.get("/handbook/options").text());

        CommandBook.words().server().options().forEach(option -> {
            assertThat(page).contains(option.names() + " " + plain(option.about()));
            assertThat(help).contains(plain(option.about()));
        });
    }

    @Test
    void the_page_of_commands_says_of_each_what_help_says() {
        String page = plain(coordinator.get("/handbook/commands").text()
                + coordinator.get("/handbook/options").text());

        for (CommandWords command : CommandBook.words().commands()) {
            String help = plain(CommandRun.of(command.name(), "--help").out()).replace("[-hV] ", "");

            assertThat(page).contains(plain(command.synopsis()), plain(command.about()));
            assertThat(help).contains(plain(command.synopsis()), plain(command.about()));
            assertThat(command.prints()).allSatisfy(words -> {
                assertThat(page).contains(plain(words));
                assertThat(help).contains(plain(words));
            });
            assertThat(command.options()).allSatisfy(option -> {
                assertThat(help).contains(plain(option.about()));
                assertThat(page).contains(plain(option.about()));
            });
        }
    }

    @Test
    void each_setting_names_its_variable_and_what_holds_without_it() {
        List<OptionSpec> settings = new CommandLine(new ServeCommand())
                .getCommandSpec().options().stream()
                        .filter(option -> !option.usageHelp() && !option.versionHelp())
                        .toList();

        assertThat(settings)
                .hasSizeGreaterThan(15)
                .allSatisfy(option -> assertThat(String.join(" ", option.description()))
                        .contains("(" + SettingsOptions.variable(option.longestName()) + ", default "));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "frost 55802 --season 2027",
                "frost --monthly -15,-13,-6,1,6,11,14,13,9,3,-4,-12 --at 46.8,-92.1,430",
                "emerge pepper 25",
                "sow --want 12 --share 0.8",
                "viability --crop pepper --years 3 --moisture 7 --temperature 18",
                "viability --crop basil --years 3 --moisture 7 --temperature 18",
                "timeline --crop pepper --postcode 55802 --season 2027",
                "push-keys"
            })
    void help_names_every_field_that_a_command_prints(String line) {
        List<String> words = List.of(line.split(" ", -1));
        CommandRun run = CommandRun.of(words.toArray(String[]::new));
        assertThat(run.status()).as(run.err()).isZero();
        String help = plain(CommandRun.of(words.get(0), "--help").out());

        List<String> fields = new ArrayList<>();
        run.json().fieldNames().forEachRemaining(fields::add);
        JsonNode harvest = run.json().path("harvest");
        harvest.fieldNames().forEachRemaining(fields::add);
        assertThat(fields)
                .hasSizeGreaterThan(1)
                .allSatisfy(field -> assertThat(help).containsPattern("\\b" + field + "\\b"));
    }

    private static String plain(String words) {
        return words.replaceAll("\\s+", " ").strip();
    }
}
