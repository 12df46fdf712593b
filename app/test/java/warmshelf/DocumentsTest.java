package warmshelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What people read beside the program keeps up with it. */
class DocumentsTest {
    private static final Pattern CALL = Pattern.compile("warmshelf\\.jar ([a-z][a-z-]*)([^\n`<]*)");
    private static final Pattern OPTION = Pattern.compile("(?<![\\w-])--[a-z][a-z-]*");
    private static final Pattern LINK = Pattern.compile("]\\(([^)#]+)[^)]*\\)");
    private static final Pattern CLASS = Pattern.compile("[`/]([A-Z][a-z]+[A-Za-z0-9]*)(?=[`.])(?!\\.[a-z]+/|\\.md)");
    private static final int LARGEST_PICTURE = 150_000;

    @ParameterizedTest
    @CsvSource({"README.md, 150", "DEVELOPERS.md, 200"})
    void documents_stay_short(String file, int lines) {
        assertThat(read(file).lines()).hasSizeLessThan(lines);
    }

    @Test
    void the_readme_names_every_command_that_help_lists() {
        String readme = read("README.md");

        assertThat(commands().keySet()).contains("serve", "frost");
        assertThat(commands().keySet().stream()
                        .filter(command -> !readme.contains("`" + command + "`"))
                        .filter(command ->
                                !readme.contains("warmshelf.jar " + command) && !readme.contains("-P" + command)))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource({"documents", "handbook"})
    void what_documents_call_can_be_called(String file) {
        CALL.matcher(read(file)).results().forEach(call -> {
            assertThat(commands()).as(file).containsKey(call.group(1));
            assertThat(options(call.group(2)))
                    .as(call.group())
                    .isSubsetOf(commands().get(call.group(1)));
        });
    }

    @ParameterizedTest
    @MethodSource("handbook")
    void every_option_that_the_handbook_names_is_one(String file) {
        Set<String> known = commands().values().stream().flatMap(Set::stream).collect(Collectors.toSet());

        assertThat(options(read(file))).isSubsetOf(known);
    }

    @ParameterizedTest
    @MethodSource("documents")
    void links_between_documents_lead_somewhere(String file) {
        Path folder = Objects.requireNonNull(Path.of(file).toAbsolutePath().getParent());

        assertThat(LINK.matcher(read(file))
                        .results()
                        .map(link -> link.group(1))
                        .filter(link -> !link.startsWith("https:"))
                        .filter(link -> !Files.exists(folder.resolve(link))))
                .isEmpty();
    }

    /** A class that was renamed is renamed there too. */
    @ParameterizedTest
    @MethodSource("classesNamed")
    void what_developers_read_names_classes_that_are_there(String name) {
        assertThat(files(Path.of("app"))).anyMatch(file -> file.endsWith("/" + name + ".java"));
    }

    @Test
    void the_picture_in_the_readme_stays_small() throws IOException {
        assertThat(Files.size(Path.of("demo/screens.webp"))).isLessThan(LARGEST_PICTURE);
        assertThat(read("README.md")).contains("(demo/screens.webp)");
    }

    @Test
    void the_readme_credits_the_data_as_their_licences_ask() {
        assertThat(read("README.md"))
                .contains("GeoNames", "CC BY 4.0", "https://creativecommons.org/licenses/by/4.0/", "vega-datasets")
                .contains("NOAA/NCEI", "Census Bureau", "ETOPO5", "Harrington & Minges (1954)", "7 CFR 201.31");
        assertThat(read("LICENSE")).contains("Apache License", "Version 2.0");
    }

    @ParameterizedTest
    @MethodSource({"documents", "handbook"})
    void documents_name_no_place_of_one_machine(String file) {
        // Paths and registry addresses hold on one machine only; a reader's is another.
        assertThat(read(file)).doesNotContainPattern("(?i)/home/|/root/|/tmp/|/wor[k]/|maven[2]|deb[.]debian");
    }

    /** Each command's name with its options. */
    private static Map<String, Set<String>> commands() {
        return App.line().getSubcommands().entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        command ->
                                command.getValue().getCommandSpec().optionsMap().keySet()));
    }

    private static Set<String> options(String words) {
        return OPTION.matcher(words).results().map(MatchResult::group).collect(Collectors.toSet());
    }

    static List<String> documents() {
        return Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md"), Path.of("app"), Path.of("db"))
                .flatMap(DocumentsTest::files)
                .filter(file -> file.endsWith(".md"))
                .toList();
    }

    /** What stands in code marks and looks like a class of ours. */
    static Set<String> classesNamed() {
        return CLASS.matcher(read("DEVELOPERS.md"))
                .results()
                .map(name -> name.group(1))
                .filter(name -> !name.matches("X(Form|Store|Pages|Command)|LocalDate"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    static List<String> handbook() {
        return files(Path.of("templates/handbook")).toList();
    }

    private static Stream<String> files(Path under) {
        try (Stream<Path> files = Files.walk(under)) {
            return files.filter(Files::isRegularFile).map(Path::toString).sorted().toList().stream();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String read(String file) {
        try {
            return Files.readString(Path.of(file));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
