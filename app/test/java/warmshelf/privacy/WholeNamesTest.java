package warmshelf.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Who asks the database for somebody's whole name. All others ask for what the person is called. */
class WholeNamesTest {
    private static final Path CODE = Path.of("app/main/java/warmshelf");
    /** Of the table itself, and of another name for it, such as ENDER for the member who ended something. */
    private static final Pattern WHOLE = Pattern.compile(
            "\\bMEMBER\\.NAME\\b|\\b(?:ASKER|ASKED|TAKER|MAKER|ENDER|DECIDER|READER|WRITER|publisher)\\.NAME\\b");

    private static final Pattern OTHER_NAME = Pattern.compile("\\b(\\w+) = MEMBER\\.as\\(");

    @Test
    void only_those_who_sign_in_judge_names_or_serve_coordinators_read_whole_names() throws IOException {
        assertThat(filesWith(WHOLE))
                .as("signing in and people, a person's own session, tables for coordinators, erasure")
                .containsExactlyInAnyOrder(
                        "group/MemberStore.java",
                        "group/CalledStore.java",
                        "group/SessionStore.java",
                        "group/LinkStore.java",
                        "exchange/PeopleExportStore.java",
                        "exchange/SowingExportStore.java",
                        "exchange/LotExportStore.java",
                        "exchange/IncomingLotStore.java",
                        "exchange/IncomingSowingStore.java",
                        "program/ProgramRowsStore.java",
                        "search/SearchStore.java",
                        "privacy/ErasureStore.java",
                        "privacy/MentionStore.java");
    }

    @Test
    void every_other_name_of_the_members_table_is_among_those_searched_for() throws IOException {
        Set<String> names = new TreeSet<>();
        for (Path file : files()) {
            OTHER_NAME.matcher(Files.readString(file)).results().forEach(found -> names.add(found.group(1)));
        }
        assertThat(names)
                .containsExactlyInAnyOrder(
                        "ASKER", "ASKED", "TAKER", "MAKER", "ENDER", "DECIDER", "READER", "WRITER", "publisher");
    }

    private static Set<String> filesWith(Pattern pattern) throws IOException {
        Set<String> found = new TreeSet<>();
        for (Path file : files()) {
            if (pattern.matcher(Files.readString(file)).find()) {
                found.add(CODE.relativize(file).toString().replace('\\', '/'));
            }
        }
        return found;
    }

    private static Set<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(CODE)) {
            return new TreeSet<>(
                    all.filter(file -> file.toString().endsWith(".java")).toList());
        }
    }
}
