package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import warmshelf.ServeCommand;

/** The files in app/deploy name only what the program has. */
class DeployFilesTest {
    private static final Path FOLDER = Path.of("app/deploy");
    private static final Pattern VARIABLE = Pattern.compile("WARMSHELF_[A-Z_]*[A-Z]");
    private static final Pattern OPTION = Pattern.compile("--[a-z][a-z-]+");
    private static final Pattern LARGEST = Pattern.compile("client_max_body_size (\\d+)m;");

    @ParameterizedTest
    @ValueSource(strings = {"warmshelf.service", "Containerfile", "compose.yaml"})
    void every_setting_is_one_that_serve_reads(String file) throws IOException {
        List<String> named = found(VARIABLE, text(file));

        assertThat(named).as("settings in %s", file).isNotEmpty();
        assertThat(found(VARIABLE, help())).containsAll(named);
    }

    @ParameterizedTest
    @ValueSource(strings = {"nginx.conf", "Caddyfile"})
    void every_option_is_one_that_serve_has_and_the_port_its_usual_one(String file) throws IOException {
        List<String> named = found(OPTION, text(file));

        assertThat(named).as("options in %s", file).contains("--base-url", "--trusted-proxies");
        assertThat(found(OPTION, help())).containsAll(named);
        assertThat(help()).contains("default 7070");
        assertThat(text(file)).contains("127.0.0.1:7070");
    }

    @Test
    void nginx_lets_the_largest_file_through_that_the_program_takes() throws IOException {
        Matcher largest = LARGEST.matcher(text("nginx.conf"));

        assertThat(largest.find()).isTrue();
        assertThat(Long.parseLong(largest.group(1))).isGreaterThanOrEqualTo(Uploads.LARGEST_MB);
    }

    private static String text(String file) throws IOException {
        return Files.readString(FOLDER.resolve(file));
    }

    private static String help() {
        StringWriter help = new StringWriter();
        new CommandLine(new ServeCommand()).usage(new PrintWriter(help));
        return help.toString();
    }

    private static List<String> found(Pattern pattern, String text) {
        return pattern.matcher(text)
                .results()
                .map(found -> found.group())
                .distinct()
                .toList();
    }
}
