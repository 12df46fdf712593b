package warmshelf.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The table of the handbook's chapter on security is whole, and names tests that there are. */
class SecurityItemTest {
    private static final Path SECTIONS = Path.of("app/test/resources/web-security-sections.csv");
    private static final Path TESTS = Path.of("app/test/java");

    /** Which requirements there are stands in the published table of the standard; the file beside this test names it. */
    @Test
    void every_requirement_of_the_first_two_levels_has_its_row() throws IOException {
        Set<String> rows = SecurityItem.all().stream().map(SecurityItem::item).collect(Collectors.toSet());
        List<String> missing = new ArrayList<>();
        for (String line : Files.readAllLines(SECTIONS)) {
            if (line.startsWith("V")) {
                missing.addAll(missing(line.split(",", -1), rows));
            }
        }

        assertThat(missing).isEmpty();
        assertThat(rows).hasSameSizeAs(SecurityItem.all()).contains("V9", "V10", "V17");
    }

    private static List<String> missing(String[] section, Set<String> rows) {
        List<String> highest = Arrays.asList(section[2].split(" ", 0));
        List<String> missing = new ArrayList<>();
        for (int number = 1; number <= Integer.parseInt(section[1]); number++) {
            String item = section[0] + "." + number;
            if (!highest.contains(String.valueOf(number)) && !rows.contains(item) && !rows.contains(section[0])) {
                String chapter = section[0].substring(0, section[0].indexOf('.'));
                if (!rows.contains(chapter)) {
                    missing.add(item);
                }
            }
        }
        return missing;
    }

    @Test
    void every_test_that_is_named_is_there() throws IOException {
        try (Stream<Path> files = Files.walk(TESTS)) {
            Set<String> there = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".java"))
                    .map(name -> name.substring(0, name.length() - ".java".length()))
                    .collect(Collectors.toSet());

            assertThat(SecurityItem.all()).allSatisfy(item -> assertThat(there).containsAll(item.tests()));
        }
    }

    @Test
    void what_is_not_held_says_why() {
        assertThat(SecurityItem.all()).allSatisfy(item -> assertThat(item.how()).endsWith("."));
    }
}
