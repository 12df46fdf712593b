package warmshelf.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class OwnCropPagesTest {
    private static final String ADDRESS =
            "/ask/plan?lot=new&crop=%s&variety=Dawn&plants=6&method=cells&heat=warm&after=light"
                    + "&container=half-tray&where=outdoors&cellsInATray=72&risk=";

    private TestGroup group;
    private Browser coordinator;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        coordinator = group.signedIn(group.coordinator());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void a_crop_without_a_table_is_asked_for_by_the_trades_range() {
        Answer added = coordinator.post("/new-crop", crop(Map.of()));

        assertThat(added.status()).isEqualTo(303);
        assertThat(added.location()).isEqualTo("/crops/oca-red");
        assertThat(coordinator.get("/crops/oca-red").text())
                .contains("Oca, red")
                .contains("Written by Ilse on")
                .contains("as the trade states it, written by Ilse: seed house catalogue")
                .contains("120 to 150 days from planting out");
        Answer plan = group.signedIn(group.member())
                .get("/ask/plan?lot=new&crop=oca-red&variety=Dawn&plants=6&method=cells&heat=warm&after=light"
                        + "&container=half-tray&where=outdoors&cellsInATray=72&risk=");
        assertThat(plan.status()).isEqualTo(200);
        // 68 to 77 °F by the trade, as its coordinator wrote
        assertThat(plan.text())
                .contains("Oca, red · Dawn")
                .contains("68 °F to 77 °F suits it")
                .contains("It needs no mat");
    }

    @Test
    void figures_over_the_reference_show_what_it_says_and_can_be_put_back() {
        Map<String, String> typed = crop(Map.of("name", "Pepper, sweet and mild hot", "emergence", "reference"));

        coordinator.post("/crops/pepper/change", typed);
        Answer changed = coordinator.get("/crops/pepper");
        assertThat(changed.text()).contains("4 to 6 (the reference: 9 to 11)");

        Answer back = coordinator.post("/crops/pepper/taking-back", Map.of("version", "1"));
        assertThat(back.status()).isEqualTo(303);
        assertThat(coordinator.get("/crops/pepper").text()).doesNotContain("the reference:");
    }

    @Test
    void the_form_of_a_change_shows_what_stands_and_asks_for_a_source() {
        Answer form = coordinator.get("/crops/pepper/change");

        assertThat(form.body())
                .contains("name=\"weeksMin\" type=\"text\" inputmode=\"decimal\" value=\"9\"")
                .contains("name=\"night\" type=\"text\" inputmode=\"decimal\" value=\"50\"")
                .contains("name=\"source\" type=\"text\" value=\"\"");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        source       | ''       | Source is empty
        name         | ''       | Name is empty
        name         | 辣椒     | a name with letters from a to z
        name         | Tomato   | there is a crop of that name
        weeksMin     | -1       | Weeks indoors at least was '-1'; a whole number from 0 to 30
        weeksMax     | 3        | Weeks indoors at most was '3'; at least 4 is accepted
        offsetLatest | -30      | Planting out at the latest was '-30'; at least -7
        night        | 140      | Nights above, in °F was '140'; a number from 5 to 77
        depth        | 60       | Depth in inches was '60'; a number from 0 to 5.91
        maturityMax  | 20       | Days at most was '20', less than the 120 days
        hardiness    | iron     | How much cold it bears was 'iron'; accepted are: hardy
        light        | maybe    | Light to come up was 'maybe'
        emergence    | magic    | How its seed answers to warmth was 'magic'; accepted are: like, stated
        emergenceDaysMax | 2    | before the first; a number from 10
        emergenceLow | 200      | Coolest in °F was '200'; a number from 32 to 113
        sourceUrl    | ftp:x    | an address that begins with https://
        """)
    void bad_figures_come_back_with_a_sentence_and_with_what_was_typed(String field, String text, String sentence) {
        Answer again = coordinator.post("/new-crop", crop(Map.of(field, text)));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.text()).contains(sentence).contains("needs short days");
        assertThat(again.body()).contains("value=\"120\"");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        soak         | tepid | A soak before sowing was 'tepid'; accepted are: unknown, needless
        soakHoursMax | 40    | Hours of soaking at most was '40'; a whole number from 1 to 24
        soakHoursMax | 6     | Hours of soaking at most was '6'; at least 8 is accepted
        coldWeeksMin | x     | Weeks cold and moist at least was 'x'
        """)
    void a_bad_treatment_names_its_field(String field, String text, String sentence) {
        Answer again =
                coordinator.post("/new-crop", crop(Map.of("soakHoursMin", "8", "hazard-burns", "yes", field, text)));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.text()).contains(sentence);
        assertThat(again.body()).contains("name=\"hazard-burns\" value=\"yes\" checked");
    }

    @Test
    void what_is_ticked_gives_its_caution_and_what_is_only_written_gives_none() {
        coordinator.post("/new-crop", crop(Map.of("treatment", "toxic, wear gloves", "hazard-poisonous", "yes")));
        coordinator.post("/new-crop", crop(Map.of("name", "Mild", "treatment", "not poisonous, burns nobody")));

        assertThat(plan("oca-red")).contains("This plant is poisonous: gloves").doesNotContain("burn skin");
        assertThat(plan("mild")).doesNotContain("poisonous:").doesNotContain("burn skin");
        assertThat(coordinator.get("/crops/oca-red").text())
                .contains("toxic, wear gloves")
                .contains("Poisonous");
        assertThat(coordinator.get("/crops/oca-red/change").body())
                .contains("name=\"hazard-poisonous\" value=\"yes\" checked")
                .doesNotContain("name=\"hazard-burns\" value=\"yes\" checked");
    }

    @Test
    void cautions_of_skin_poison_and_electricity_are_not_folded_away() {
        coordinator.post("/new-crop", crop(Map.of("hazard-poisonous", "yes", "hazard-burns", "yes")));

        String unfolded =
                withoutFolds(coordinator.get(ADDRESS.formatted("oca-red")).body());

        assertThat(unfolded)
                .contains("This plant is poisonous: gloves")
                .contains("burn skin and eyes")
                .contains("only on an outlet with a residual-current switch")
                .as("one line where it stands in full above")
                .contains("Poisonous plant: gloves, a clear label");
        assertThat(withoutFolds(
                        coordinator.get("/how-to/move-to-cells?crop=oca-red").body()))
                .contains("Caution: poisonous plants")
                .contains("Caution: seed of very hot peppers");
        assertThat(coordinator.get("/how-to/pot-on?crop=oca-red").body())
                .as("no seed is handled there")
                .doesNotContain("Caution: seed of very hot peppers");
    }

    private static String withoutFolds(String body) {
        return body.replaceAll("(?s)<details.*?</details>", "");
    }

    private String plan(String crop) {
        Answer plan = coordinator.get(ADDRESS.formatted(crop));
        assertThat(plan.status()).isEqualTo(200);
        return plan.text();
    }

    @Test
    void a_relative_that_there_is_not_is_refused() {
        Answer again = coordinator.post("/new-crop", crop(Map.of("emergence", "like", "emergenceLike", "moss")));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.text()).contains("Comes up like was 'moss'; choose one of the crops in the list.");
        assertThat(again.body()).as("raised from slips").doesNotContain("value=\"sweet-potato\"");
    }

    @Test
    void who_was_overtaken_is_told_by_whom_and_loses_nothing() {
        coordinator.post("/new-crop", crop(Map.of()));

        Answer late = coordinator.post("/crops/oca-red/change", crop(Map.of("version", "0", "weeksMax", "9")));

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains("Ilse changed this crop while you were typing");
        assertThat(late.body()).contains("value=\"9\"").contains("name=\"version\" value=\"1\"");
        assertThat(coordinator
                        .post("/crops/oca-red/change", crop(Map.of("version", "1", "weeksMax", "9")))
                        .status())
                .isEqualTo(303);
    }

    @Test
    void members_read_crops_but_do_not_change_them() {
        Browser member = group.signedIn(group.member());

        assertThat(member.get("/crops/pepper").text()).doesNotContain("Change this crop");
        assertThat(member.get("/crops/pepper/change").status()).isEqualTo(403);
        assertThat(member.post("/new-crop", crop(Map.of())).status()).isEqualTo(403);
    }

    @Test
    void a_varietys_days_are_written_once_and_changed_from_what_stands() {
        Map<String, String> typed =
                Map.of("variety", "Harbour Light", "maturityMin", "58", "varietySource", "the packet", "version", "0");

        assertThat(coordinator.post("/crops/pepper/varieties", typed).status()).isEqualTo(303);
        assertThat(coordinator.get("/crops/pepper").text())
                .contains("Harbour Light : first harvest 58 days from planting out (the packet; written by Ilse");
        assertThat(coordinator.get("/crops/pepper/varieties?name=harbour+light").body())
                .contains("value=\"58\"")
                .contains("name=\"version\" value=\"1\"");
        Answer late = coordinator.post("/crops/pepper/varieties", typed);
        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains("Somebody wrote of this variety while you were typing");
    }

    @ParameterizedTest
    @CsvSource({
        "maturityMin, '', Days to the first harvest is empty",
        "maturityMin, 0, Days to the first harvest was '0'; a whole number from 1 to 400",
        "variety, '', Variety is empty",
        "varietySource, '', Who says so is empty"
    })
    void a_variety_needs_a_name_days_and_who_says_so(String field, String text, String sentence) {
        Map<String, String> typed = new HashMap<>(
                Map.of("variety", "Harbour Light", "maturityMin", "58", "varietySource", "the packet", "version", "0"));
        typed.put(field, text);

        Answer again = coordinator.post("/crops/pepper/varieties", typed);

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.text()).contains(sentence);
    }

    private static Map<String, String> crop(Map<String, String> changed) {
        Map<String, String> typed = new HashMap<>(Map.of(
                "name", "Oca, red",
                "hardiness", "half-hardy",
                "weeksMin", "4",
                "weeksMax", "6",
                "offset", "-7",
                "offsetLatest", "14",
                "light", "unknown",
                "note", "needs short days",
                "source", "seed house catalogue"));
        typed.putAll(Map.of(
                "maturityMin", "120",
                "maturityMax", "150",
                "maturityBasis", "transplanting",
                "emergence", "stated",
                "emergenceDaysMin", "10",
                "emergenceDaysMax", "28",
                "emergenceLow", "68",
                "emergenceHigh", "77"));
        typed.putAll(changed);
        return typed;
    }
}
