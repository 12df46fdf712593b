package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import warmshelf.ReferenceTable;

/** Texts quote figures by the names of their rows and write none themselves, so that a figure is corrected in one place. */
class FiguresOfTextsTest {
    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"|'[^']*'");
    private static final Pattern NAMED =
            Pattern.compile("(figure|claim)\\.(\\w+)\\(((?:\\s*(?:\"[^\"]*\"|'[^']*')\\s*,?)*)");
    private static final Set<String> OF_CONTAINERS = Set.of("container", "side", "cells");
    /** Numbers in words before what is measured; 'an hour or two' and 'once a day' are no figures. */
    private static final Pattern SPELLED = Pattern.compile(
            "(?i)\\b(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|thirty)"
                    + "(?: (?:to|or) \\w+)? (?:minutes?|hours?|days?|weeks?|months?|nights?|degrees|times|parts?|inch(?:es)?)\\b");

    static List<GuideText> texts() throws IOException {
        return GuideText.all().stream()
                .filter(text -> !text.section().equals("rests on"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("texts")
    void no_text_writes_a_figure_of_its_own(GuideText text) {
        assertThat(text.plain()).doesNotContainPattern("\\d").doesNotContainPattern(SPELLED);
    }

    @ParameterizedTest
    @MethodSource("texts")
    void no_figure_is_written_into_what_is_filled_in(GuideText text) {
        assertThat(text.filledIn())
                .allSatisfy(tag -> assertThat(QUOTED.matcher(tag)
                                .replaceAll(quoted -> rows().contains(name(quoted.group())) ? "" : "$0"))
                        .doesNotContainPattern("\\d")
                        .doesNotContainPattern(SPELLED));
    }

    private static String name(String quoted) {
        return quoted.substring(1, quoted.length() - 1);
    }

    private static Set<String> rows() {
        Set<String> names = new HashSet<>();
        ReferenceTable.rows("practice.csv").forEach(row -> names.add(row.get("item")));
        ReferenceTable.rows("advice.csv").forEach(row -> names.add(row.get("item")));
        ReferenceTable.rows("containers.csv").forEach(row -> names.add(row.get("name")));
        return names;
    }

    @ParameterizedTest
    @MethodSource("texts")
    void every_figure_that_is_named_stands_in_a_table(GuideText text) {
        for (String tag : text.filledIn()) {
            NAMED.matcher(tag)
                    .results()
                    .filter(call -> !OF_CONTAINERS.contains(call.group(2)))
                    .forEach(FiguresOfTextsTest::assertInATable);
        }
    }

    private static void assertInATable(MatchResult call) {
        List<String> names = QUOTED.matcher(call.group(3))
                .results()
                .map(each -> name(each.group()))
                .toList();
        int topic = call.group(1).equals("claim") ? 1 : 0;

        assertThat(names).as(call.group()).hasSizeGreaterThan(topic + 1);
        assertThatCode(() -> PracticeTable.bundled().row(names.get(topic), names.get(topic + 1)))
                .as(call.group())
                .doesNotThrowAnyException();
    }

    @Test
    void every_figure_beside_the_published_ones_is_quoted() throws IOException {
        String written = GuideText.allWritten() + GuideText.code();

        assertThat(ReferenceTable.rows("advice.csv"))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(written)
                        .as("%s: %s", row.get("topic"), row.get("item"))
                        .containsPattern("[\"']%s[\"']".formatted(Pattern.quote(row.get("item")))));
    }

    /** A title or caution is kept once for all, so its figures may not change with the reader's units. */
    @Test
    void what_is_the_same_for_every_reader_names_no_units() throws IOException {
        assertThat(texts().stream().filter(FiguresOfTextsTest::isFixed))
                .hasSizeGreaterThan(60)
                .allSatisfy(text -> assertThat(Advice.in(Articles.US).say(text.file(), text.section()))
                        .isEqualTo(Advice.in(Articles.METRIC).say(text.file(), text.section())));
    }

    private static boolean isFixed(GuideText text) {
        return text.file().startsWith("cautions/")
                || text.file().startsWith("problems/")
                || Set.of("title", "about", "check", "check in a bag", "check in cells")
                        .contains(text.section());
    }

    @Test
    void what_is_reckoned_is_reckoned_right() {
        assertThat(low("peroxide", "half and half")).isEqualTo(low("peroxide", "household strength") / 2);
        assertThat(amount("peroxide", "best")).isEqualTo(ofHousehold("best by volume"));
        assertThat(amount("peroxide", "burnt roots").low())
                .isEqualTo(ofHousehold("burnt roots by volume").low());
        // 100 milligrams of nitrogen in a litre, from a powder that is a fifth nitrogen; a US gallon is 3.785 litres.
        assertThat(100 / 1000.0 / 0.2).isEqualTo(0.5);
        assertThat(Math.round(0.5 * 3.78541 * 10) / 10.0).isEqualTo(low("feed", "powder for that figure"));
        assertThat(5 * Math.round(25 / 0.45359237 / 5)).isEqualTo((long) low("cautions", "heavy bag in pounds"));
        assertThat(low("light", "seconds in an hour")).isEqualTo(60 * 60);
    }

    private static double low(String topic, String item) {
        return amount(topic, item).low();
    }

    private static Amount amount(String topic, String item) {
        return Articles.figures(Articles.US).amount(topic, item);
    }

    /** Peroxide in a mix with so many percent of household solution by volume. */
    private static Amount ofHousehold(String byVolume) {
        Amount volume = amount("peroxide", byVolume);
        double household = low("peroxide", "household strength");
        return new Amount(
                thousandths(volume.low() * household),
                thousandths(volume.high() * household),
                "% peroxide",
                Amount.Bound.EXACT);
    }

    private static double thousandths(double percentOfPercent) {
        return Math.round(percentOfPercent * 10) / 1000.0;
    }
}
