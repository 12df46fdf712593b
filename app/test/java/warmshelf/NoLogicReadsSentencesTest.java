package warmshelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Codes and types decide, words are for people. What is looked for here is a rule of thumb: two words in one literal, or in a
 * constant of the same class, where text is compared, searched, taken apart or chosen by.
 */
class NoLogicReadsSentencesTest {
    private static final String TWO_WORDS = "\"[^\"\\n]*[A-Za-z]{2} [A-Za-z]{2}[^\"\\n]*\"";
    private static final String READS =
            "\\.(?:contains|startsWith|endsWith|equals|equalsIgnoreCase|matches|indexOf|lastIndexOf|replace|replaceAll|replaceFirst|split)"
                    + "\\(\\s*";
    private static final Pattern COMPARED = Pattern.compile(READS + TWO_WORDS);
    private static final Pattern READ_FROM = Pattern.compile(TWO_WORDS + READS);
    private static final Pattern CHOSEN_BY = Pattern.compile("case\\s+(?:\"[^\"]*\",\\s*)*" + TWO_WORDS);
    private static final Pattern LOOKED_UP = Pattern.compile("(?:entry|Map\\.of)\\(\\s*" + TWO_WORDS);
    private static final Pattern CONSTANT = Pattern.compile("String ([A-Z][A-Z_0-9]*) =\\s*" + TWO_WORDS);

    /** Codes that are written with a space and cannot change any more, and words of others who offer no code. */
    private static final Map<String, String> WITH_REASON = Map.of(
            "demo/DemoLinks.java", "the name of an invented person",
            "demo/DemoGroup.java", "the name of the invented group",
            "reminder/push/PushAddress.java", "a code of the database, held by a check there",
            "placing/MoveBookStore.java", "codes of the audit, as they have been written",
            "web/Uploads.java", "the server below says that a limit was passed in words only");

    @Test
    void of_the_program() throws IOException {
        List<String> found = new ArrayList<>();
        Path main = Path.of("app/main/java/warmshelf");
        try (Stream<Path> files = Files.walk(main)) {
            files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !WITH_REASON.containsKey(
                            main.relativize(file).toString().replace('\\', '/')))
                    .forEach(file -> in(read(file)).forEach(line -> found.add(main.relativize(file) + ": " + line)));
        }

        assertThat(found).isEmpty();
    }

    @Test
    void the_rule_finds_what_it_is_for() {
        assertThat(in("if (problem.contains(\"cells are needed\")) {")).hasSize(1);
        assertThat(in("private static final String D = \"Sources disagree\";\nreturn verdict.startsWith(D);"))
                .hasSize(1);
        assertThat(in("case \"one\", \"some words\" -> 1;")).hasSize(1);
        assertThat(in("Map.entry(\"surface sow\", plain())")).hasSize(1);
        assertThat(in("text.equals(\"soak\")")).isEmpty();
        assertThat(in("\"About %d days\".formatted(3)")).isEmpty();
    }

    private static List<String> in(String source) {
        String code = source.replaceAll("(?m)^\\s*(//|\\*|/\\*).*$", "");
        List<String> found = new ArrayList<>();
        for (Pattern pattern : List.of(COMPARED, READ_FROM, CHOSEN_BY, LOOKED_UP, ofConstants(code))) {
            Matcher matcher = pattern.matcher(code);
            while (matcher.find()) {
                found.add(matcher.group().strip());
            }
        }
        return found;
    }

    /** The same reads of a constant that holds two words. */
    private static Pattern ofConstants(String code) {
        Map<String, String> constants = new HashMap<>();
        Matcher matcher = CONSTANT.matcher(code);
        while (matcher.find()) {
            constants.put(matcher.group(1), "");
        }
        return constants.isEmpty()
                ? Pattern.compile("(?!)")
                : Pattern.compile(READS + "(?:" + String.join("|", constants.keySet()) + ")\\)");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
