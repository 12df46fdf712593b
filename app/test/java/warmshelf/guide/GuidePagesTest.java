package warmshelf.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import warmshelf.check.CheckKind;
import warmshelf.crop.CropCatalogue;
import warmshelf.sowing.Problem;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GuidePagesTest {
    private TestGroup group;
    private Browser american;
    private Browser metric;

    @BeforeAll
    void open() {
        group = TestGroup.open();
        american = group.signedIn(group.member());
        metric = group.signedIn(group.onDuty());
        metric.post(
                "/settings",
                Map.of(
                        "name",
                        "Priya Nair",
                        "country",
                        "US",
                        "postcode",
                        "55811",
                        "temperature",
                        "C",
                        "length",
                        "cm",
                        "version",
                        "1"));
    }

    @AfterAll
    void close() {
        group.close();
    }

    @ParameterizedTest
    @EnumSource(Problem.class)
    void each_problem_leads_to_a_page_that_tells_more(Problem problem) {
        assertThat(american.get("/how-to/" + problem.guide()).status()).isEqualTo(200);
    }

    @ParameterizedTest
    @EnumSource(Topic.class)
    void each_page_has_numbered_steps_its_table_and_nobody_elses_units(Topic topic) {
        Answer page = american.get("/how-to/" + topic.word());

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.body()).contains("<ol>");
        assertThat(page.text()).contains(topic.title()).doesNotContainPattern("°C|\\d[ \u00a0](?:cm|mm|ml)\\b");
        assertThat(metric.get("/how-to/" + topic.word()).text())
                .doesNotContainPattern("°F|\\d[ \u00a0](?:in|fl oz)\\b(?! ten)");
    }

    @ParameterizedTest
    @EnumSource(Topic.class)
    void links_lead_only_to_encrypted_pages_and_tell_them_nothing(Topic topic) {
        assertThat(american.get("/how-to/" + topic.word()).body())
                .doesNotContainPattern("href=\"http:")
                .doesNotContainPattern("href=\"https:[^\"]*\"(?! rel=\"external noreferrer\")");
    }

    @Test
    void what_concerns_skin_eyes_poison_or_electricity_stands_in_a_line_before_the_steps() {
        String sow = american.get("/how-to/sow?crop=foxglove").body();

        assertThat(sow.substring(0, sow.indexOf("<ol>")))
                .contains("Poisonous plants: gloves")
                .contains("Electricity near water: dry hands")
                .contains("Treated seed: chemical-resistant gloves")
                .as("foxgloves burn nobody")
                .doesNotContain("Hot peppers burn skin and eyes");
        assertThat(american.get("/how-to/sow?crop=pepper-very-hot").body()).contains("Hot peppers burn skin and eyes");
    }

    @Test
    void a_page_marks_common_practice_and_low_authority_and_names_its_cautions() {
        assertThat(american.get("/how-to/soak").text())
                .contains("common practice", "(low authority)", "Caution", "Believe before us: a poison centre.");
        assertThat(american.get("/how-to/sow").text()).contains("from memory");
    }

    @Test
    void the_list_leads_to_every_page_and_keeps_the_crop() {
        Answer list = american.get("/how-to?crop=lettuce");

        assertThat(list.text()).contains("How to: Lettuce");
        assertThat(Topic.all())
                .allSatisfy(topic ->
                        assertThat(list.body()).contains("href=\"/how-to/" + topic.word() + "?crop=lettuce\""));
    }

    @Test
    void every_crop_can_be_filled_in() {
        CropCatalogue.bundled()
                .all()
                .forEach(crop -> assertThat(
                                metric.get("/how-to/covering?crop=" + crop.id()).status())
                        .as(crop.id())
                        .isEqualTo(200));
        assertThat(metric.get("/how-to/covering?crop=pepper").text())
                .contains("Pepper, sweet and mild hot")
                .contains("0.6\u00a0cm");
    }

    @Test
    void a_crop_or_step_that_does_not_exist_gets_a_clear_sentence() {
        Answer noCrop = american.get("/how-to/sow?crop=moonflower");
        Answer noStep = american.get("/how-to/sowing-by-moonlight");

        assertThat(noCrop.status()).isEqualTo(404);
        assertThat(noCrop.text()).contains("There is no crop 'moonflower' in the list.");
        assertThat(noStep.status()).isEqualTo(404);
        assertThat(noStep.text()).contains("There is no how-to of this name.");
        assertThat(american.get("/how-to/sow?crop=").status()).isEqualTo(200);
        assertThat(american.get("/how-to?crop=%3Cscript%3E").body())
                .doesNotContain("<script>'")
                .contains("There is no crop");
    }

    @Test
    void strangers_sign_in_first() {
        assertThat(group.stranger().get("/how-to/light").location()).startsWith("/sign-in");
    }

    @Test
    void every_kind_of_check_on_the_round_leads_to_a_page() {
        assertThat(CheckKind.values())
                .allSatisfy(kind -> assertThat(Topic.find(kind.guide())).isPresent());
    }

    @Test
    void help_and_the_crops_page_lead_there() {
        assertThat(american.get("/help").body()).contains("href=\"/how-to\"");
        assertThat(american.get("/crops/pepper").body()).contains("href=\"/how-to?crop=pepper\"");
    }
}
