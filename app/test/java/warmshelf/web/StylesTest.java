package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StylesTest {
    private static final Path STYLES = Path.of("static/css");
    // Eleven kilobytes above what it was before pages were made of lines that open, navigation got a second row, the
    // one
    // button of a page came into the thumb's reach, the round's card filled a phone, and racks stood beside each other
    // with what waits, and the round’s things became rows on a desk: what they save in each page's own bytes is more.
    private static final int LARGEST = 40 * 1024;

    @Test
    void every_variable_used_is_defined() {
        Set<String> defined = found("(--[a-z0-9-]+):");

        assertThat(found("var\\((--[a-z0-9-]+)\\)")).isSubsetOf(defined);
    }

    @Test
    void every_style_is_part_of_the_one_that_pages_link() throws IOException {
        String all = Files.readString(STYLES.resolve("app.css"));

        assertThat(Files.readString(Path.of("templates/layout/page.peb"))).contains("asset(\"css/app.css\")");
        assertThat(sheets()).allSatisfy(file -> assertThat(all).contains("url(\"" + file.getFileName() + "\")"));
    }

    @Test
    void the_sheet_that_is_sent_holds_all_and_imports_nothing() {
        String sent = new String(new Assets().content("css/app.css"), StandardCharsets.UTF_8);

        assertThat(sent).doesNotContain("@import");
        assertThat(sheets()).allSatisfy(file -> assertThat(sent).contains(read(file)));
    }

    // A hairline of at most three pixels is none of the distances.
    @ParameterizedTest
    @ValueSource(strings = {"font(?:-size)?", "(?:margin|padding|(?:row-|column-)?gap)(?:-[a-z-]+)?"})
    void letters_and_distances_are_of_the_one_scale_in_the_sheet_of_tokens(String property) {
        Pattern written = Pattern.compile("(?<![\\w-])" + property + ":([^;}]+)");
        Pattern size = Pattern.compile("(?<![\\w.-])(?![1-3]px)\\d*\\.?\\d+(?:rem|em|px|pt|vw|vh|ch)\\b");

        List<String> outside = sheets().stream()
                .filter(file -> !file.endsWith("tokens.css"))
                .flatMap(file -> written.matcher(read(file).replaceAll("(?s)/\\*.*?\\*/", ""))
                        .results()
                        .map(found -> found.group(1))
                        .filter(value -> size.matcher(value).find())
                        .map(value -> file.getFileName() + ":" + value))
                .toList();

        assertThat(outside).isEmpty();
    }

    @Test
    void all_rules_together_stay_light() {
        assertThat(rules().length()).isLessThan(LARGEST);
    }

    // Contrast as WCAG 2.2 defines it: at least 4.5 for text (1.4.3), 3 for the edges of fields (1.4.11).
    @ParameterizedTest
    @CsvSource({
        "--ink,--paper,4.5",
        "--ink,--sheet,4.5",
        "--ink,--shade,4.5",
        "--ink-soft,--paper,4.5",
        "--ink-soft,--sheet,4.5",
        "--link,--paper,4.5",
        "--link,--sheet,4.5",
        "--problem,--paper,4.5",
        "--problem,--sheet,4.5",
        "--problem,--problem-sheet,4.5",
        "--ink,--problem-sheet,4.5",
        "--on-heat,--cool,4.5",
        "--on-heat,--warm,4.5",
        "--on-heat,--hot,4.5",
        "--on-very-hot,--very-hot,4.5",
        "--edge,--paper,3",
        "--edge,--sheet,3"
    })
    void writing_stands_out_by_day_and_in_the_dark(String writing, String ground, double least) throws IOException {
        String tokens = Files.readString(STYLES.resolve("tokens.css"));
        Map<String, String> light = colours(tokens.substring(0, tokens.indexOf("@media")));
        Map<String, String> dark = new LinkedHashMap<>(light);
        dark.putAll(colours(tokens.substring(tokens.indexOf("@media"))));

        for (Map<String, String> colours : List.of(light, dark)) {
            assertThat(contrast(colours.getOrDefault(writing, ""), colours.getOrDefault(ground, "")))
                    .isGreaterThanOrEqualTo(least);
        }
    }

    @Test
    void contrast_is_reckoned_as_the_standard_does() {
        // Black on white is 21:1 by the definition; #767676 on white is the well-known lightest grey that reaches 4.5.
        assertThat(contrast("#000000", "#ffffff")).isEqualTo(21.0);
        assertThat(contrast("#767676", "#ffffff")).isBetween(4.5, 4.6);
    }

    private static double contrast(String one, String other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(String colour) {
        return 0.2126 * linear(colour, 1) + 0.7152 * linear(colour, 3) + 0.0722 * linear(colour, 5);
    }

    private static double linear(String colour, int at) {
        double part = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }

    private static Map<String, String> colours(String text) {
        Map<String, String> colours = new LinkedHashMap<>();
        Matcher matcher = Pattern.compile("(--[a-z-]+): (#[0-9a-f]{6});").matcher(text);
        while (matcher.find()) {
            colours.put(matcher.group(1), matcher.group(2));
        }
        return colours;
    }

    private static Set<String> found(String pattern) {
        return Pattern.compile(pattern)
                .matcher(rules())
                .results()
                .map(result -> result.group(1))
                .collect(Collectors.toSet());
    }

    private static String rules() {
        return sheets().stream()
                .map(StylesTest::read)
                .collect(Collectors.joining())
                .replaceAll("(?s)/\\*.*?\\*/", "");
    }

    /** Every sheet but the one that only names the others. */
    private static List<Path> sheets() {
        try (Stream<Path> files = Files.list(STYLES)) {
            return files.filter(file -> !file.endsWith("app.css")).sorted().toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
