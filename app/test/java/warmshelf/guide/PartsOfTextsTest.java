package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import warmshelf.check.CheckKind;
import warmshelf.sowing.Problem;
import warmshelf.timeline.Step;

/** No text is left over that nobody reads, and none is quoted that is not there. */
class PartsOfTextsTest {
    private static final Pattern QUOTE = Pattern.compile("part\\.of\\(\"([^\"]+)\", \"([^\"]+)\"\\)");
    private static final Pattern CASE =
            Pattern.compile(" (?:in a bag|in cells|with treated seed|of one plant|of hot kinds|of bags)$");

    private static String written = "";
    private static String code = "";

    @BeforeAll
    static void read() throws IOException {
        written = GuideText.allWritten();
        code = GuideText.code();
    }

    static List<GuideText> texts() throws IOException {
        return GuideText.all();
    }

    @ParameterizedTest
    @MethodSource("texts")
    void every_part_is_read_somewhere(GuideText text) {
        assertThat(isQuoted(text) || isAskedFor(text)).isTrue();
    }

    private static boolean isQuoted(GuideText text) {
        return text.file().startsWith("steps/")
                && written.contains(
                        "part.of(\"%s\", \"%s\")".formatted(text.file().substring("steps/".length()), text.section()));
    }

    private static boolean isAskedFor(GuideText text) {
        String section = CASE.matcher(text.section()).replaceAll("");
        return code.contains("\"" + section + "\"")
                || code.contains("\"" + section + " \"")
                || code.contains("\"" + text.section() + "\"");
    }

    @ParameterizedTest
    @MethodSource("texts")
    void what_is_quoted_is_there(GuideText text) {
        QUOTE.matcher(text.written())
                .results()
                .forEach(quote -> assertThat(Advice.has(Advice.stepFile(quote.group(1)), quote.group(2)))
                        .as(quote.group())
                        .isTrue());
    }

    @Test
    void every_file_tells_of_something_the_program_knows() throws IOException {
        Stream<String> known = Stream.of(
                        Topic.all().stream().map(topic -> "articles/" + topic.word()),
                        Arrays.stream(Step.values()).map(step -> "steps/" + step.word()),
                        Stream.of(
                                "steps/any",
                                "steps/labels",
                                "steps/mat-reading",
                                "steps/slips",
                                "steps/sow-outside",
                                "steps/chill-look",
                                "steps/bulbs",
                                "cautions/feed"),
                        Arrays.stream(Problem.values()).map(problem -> "problems/" + problem.word()),
                        Arrays.stream(Hazard.values()).map(Hazard::file))
                .flatMap(each -> each);

        assertThat(GuideText.all().stream().map(GuideText::file).distinct())
                .containsExactlyInAnyOrderElementsOf(known.toList());
    }

    @Test
    void what_is_looked_for_on_the_round_has_a_title_and_a_page() {
        assertThat(CheckKind.values()).allSatisfy(kind -> {
            assertThat(kind.title()).isNotBlank();
            assertThat(Topic.find(kind.guide())).isPresent();
        });
        assertThat(Arrays.stream(CheckKind.values()).map(CheckKind::title)).doesNotHaveDuplicates();
    }

    @Test
    void the_lists_of_an_article_name_what_there_is() {
        assertThat(Set.copyOf(Topic.all()))
                .allSatisfy(topic -> assertThat(Articles.of(topic, Articles.US).related())
                        .isNotEmpty()
                        .doesNotContain(topic));
    }
}
