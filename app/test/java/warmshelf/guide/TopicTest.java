package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import warmshelf.ReferenceTable;
import warmshelf.timeline.Step;

class TopicTest {
    @ParameterizedTest
    @EnumSource(Step.class)
    void every_step_of_the_timeline_has_a_page(Step step) {
        assertThat(Topic.find(step.guide())).isPresent();
    }

    @ParameterizedTest
    @EnumSource(Topic.class)
    void every_page_tells_what_to_do_in_both_kinds_of_units(Topic topic) {
        for (var units : Set.of(Articles.US, Articles.METRIC)) {
            Article article = Articles.of(topic, units);

            assertThat(article.lead()).isNotBlank();
            assertThat(Articles.body(topic, units).split("<li>")).hasSizeGreaterThanOrEqualTo(5);
            assertThat(Articles.comparisons(topic, units))
                    .allSatisfy(comparison -> assertThat(comparison.verdict()).isNotBlank());
        }
    }

    @ParameterizedTest
    @EnumSource(Topic.class)
    void nobody_reads_units_of_others(Topic topic) {
        assertThat(Articles.text(topic, Articles.US)).doesNotContainPattern("°C|Celsius|\\d (?:cm|mm|ml|litres?)\\b");
        assertThat(Articles.text(topic, Articles.METRIC))
                .doesNotContainPattern("°F|Fahrenheit|\\d (?:in|ft|fl oz|quarts?|gallons?|teaspoons?)\\b(?! ten)");
    }

    @ParameterizedTest
    @EnumSource(Topic.class)
    void no_page_prints_the_tables_own_shorthand(Topic topic) {
        assertThat(Articles.text(topic, Articles.METRIC))
                .doesNotContainPattern("DISAGREES|COMPUTED|\\(alt\\)|\\d F\\b");
    }

    @Test
    void every_row_of_the_table_of_practice_is_on_a_page() {
        Set<String> told =
                Articles.claims(Articles.US).stream().map(Claim::printed).collect(Collectors.toSet());

        assertThat(PracticeTable.bundled().rows())
                .hasSizeGreaterThanOrEqualTo(70)
                .allSatisfy(row ->
                        assertThat(told).as(row.topic() + ", " + row.item()).contains(row.printed()));
    }

    @Test
    void every_hazard_of_the_table_stands_as_a_caution_on_a_page() {
        Set<String> cautioned = Topic.all().stream()
                .flatMap(topic -> Articles.of(topic, Articles.US).hazards().stream())
                .flatMap(hazard -> hazard.rows().stream())
                .map(SafetyRow::hazard)
                .collect(Collectors.toSet());

        assertThat(ReferenceTable.rows("safety.csv"))
                .hasSize(37)
                .allSatisfy(row -> assertThat(cautioned).contains(row.get("hazard")));
    }

    @Test
    void each_caution_defers_only_to_those_the_table_names() {
        for (Hazard hazard : Hazard.values()) {
            String named = hazard.rows().stream().map(SafetyRow::deferTo).collect(Collectors.joining("; "));

            assertThat(hazard.deferTo().split(", "))
                    .as(hazard.name())
                    .allSatisfy(body -> assertThat(named)
                            .contains(body.replaceFirst("^(the|an?|your) ", "").replace("’s", "")));
        }
    }

    @Test
    void each_step_at_which_the_table_sees_a_danger_has_its_caution() {
        Map.of(
                        Topic.SOAK, Set.of(Hazard.PEROXIDE, Hazard.TREATED_SEED, Hazard.HOT_PEPPER),
                        Topic.SOW, Set.of(Hazard.COMPOST, Hazard.TREATED_SEED, Hazard.ELECTRICITY, Hazard.POISONOUS),
                        Topic.BOTTOM_HEAT, Set.of(Hazard.ELECTRICITY, Hazard.MATS),
                        Topic.FIRST_LOOK, Set.of(Hazard.MOULD),
                        Topic.MOVE_TO_CELLS, Set.of(Hazard.COMPOST, Hazard.TREATED_SEED),
                        Topic.LIGHT, Set.of(Hazard.ELECTRICITY, Hazard.HIGH_SHELF),
                        Topic.WATERING, Set.of(Hazard.ELECTRICITY),
                        Topic.DAMPING_OFF, Set.of(Hazard.BLEACH, Hazard.MOULD),
                        Topic.POT_ON, Set.of(Hazard.COMPOST, Hazard.SKIN),
                        Topic.RIPE, Set.of(Hazard.HOT_PEPPER))
                .forEach((topic, hazards) -> assertThat(
                                Articles.of(topic, Articles.US).hazards())
                        .as(topic.name())
                        .containsAll(hazards));
    }

    @Test
    void a_word_that_is_no_step_is_not_found() {
        assertThat(Topic.find("sowing-by-moonlight")).isEmpty();
        assertThat(Arrays.stream(Topic.values()).map(Topic::word)).doesNotHaveDuplicates();
    }
}
