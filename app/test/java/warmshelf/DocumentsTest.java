package warmshelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** What people read beside the program keeps up with it. */
class DocumentsTest {
    @Test
    void the_readme_lists_every_setting_with_its_variable() throws IOException {
        List<OptionSpec> settings = new CommandLine(new ServeCommand())
                .getCommandSpec().options().stream()
                        .filter(option -> !option.usageHelp() && !option.versionHelp())
                        .toList();
        String readme = read("README.md");

        assertThat(settings).hasSizeGreaterThan(5).allSatisfy(option -> {
            String variable = "WARMSHELF_"
                    + option.longestName().substring(2).replace('-', '_').toUpperCase(Locale.ROOT);
            assertThat(readme).contains("| `" + option.longestName() + "` | `" + variable + "` |");
        });
    }

    @Test
    void the_readme_names_every_command_that_help_lists() throws IOException {
        String help = warmshelf.testing.CommandRun.of("--help").out();
        String readme = read("README.md");

        List<String> commands = help.lines()
                .dropWhile(line -> !line.startsWith("Commands:"))
                .skip(1)
                .filter(line -> line.matches(" {2}\\w.*"))
                .map(line -> line.strip().split("\\s+", -1)[0])
                .toList();

        assertThat(commands)
                .contains("serve", "frost")
                .allSatisfy(command -> assertThat(readme).contains("`" + command));
    }

    @Test
    void the_readme_credits_the_data_as_their_licences_ask() throws IOException {
        assertThat(read("README.md"))
                .contains("GeoNames", "CC BY 4.0", "https://creativecommons.org/licenses/by/4.0/", "vega-datasets")
                .contains("NOAA/NCEI", "Census Bureau", "ETOPO5", "Harrington & Minges (1954)", "7 CFR 201.31");
        assertThat(read("LICENSE")).contains("Apache License", "Version 2.0");
    }

    @ParameterizedTest
    @ValueSource(strings = {"README.md", "DEVELOPERS.md"})
    void documents_name_no_place_of_one_machine(String file) throws IOException {
        // Paths and registry addresses hold on one machine only; a reader's is another.
        assertThat(read(file)).doesNotContainPattern("(?i)/home/|/root/|/tmp/|/wor[k]/|maven[2]|deb[.]debian");
    }

    private static String read(String file) throws IOException {
        return Files.readString(Path.of(file));
    }
}
