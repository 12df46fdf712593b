package warmshelf.label;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.LABEL_RUN;
import static warmshelf.db.generated.Tables.SHORT_CODE;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

class LabelPagesTest {
    private Cellar cellar;
    private String peppers;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
        peppers = cellar.ask(Cellar.peppers());
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    private void sow() {
        cellar.placeAsSuggested(peppers);
        Answer sown = cellar.tick(peppers, Map.of("step", "sown"));
        assertThat(sown.status()).as(sown.text()).isEqualTo(303);
    }

    private Answer print(String purpose) {
        return cellar.member()
                .post("/labels/runs", Map.of("of", "mine", "take", purpose + "-" + peppers, "stock", "letter-30"));
    }

    @Test
    void what_is_sown_has_no_label_until_it_is_printed_and_the_round_says_so() {
        sow();
        assertThat(cellar.member().get("/labels").text()).contains("1 tray has no label yet");
        assertThat(cellar.member().get("/today?show=all").text()).contains("No label yet.");

        Answer printed = print("tray");
        assertThat(printed.status()).as(printed.text()).isEqualTo(303);
        Answer run = cellar.member().get(printed.location());

        assertThat(run.text()).contains("Did they come out?", "1 tray now count as labelled");
        assertThat(run.header("Refresh")).contains("/labels.pdf");
        assertThat(cellar.member().get("/labels").text()).contains("Everything of yours that is sown has its label.");
        assertThat(cellar.member().get("/today?show=all").text()).doesNotContain("No label yet.");
        Answer pdf = cellar.member().get(printed.location().replace("?fresh=yes", "/labels.pdf"));
        assertThat(pdf.header("Content-Type")).startsWith("application/pdf");
        assertThat(pdf.body()).startsWith("%PDF-1.");
    }

    @Test
    void what_did_not_come_out_has_no_label_and_the_same_labels_are_used_again() {
        sow();
        String run = print("tray").location().replace("?fresh=yes", "");
        assertThat(cellar.member().get("/labels?again=yes").text()).contains("from label 2");

        Answer undone = cellar.member().post(run + "/undoing");

        assertThat(undone.status()).isEqualTo(303);
        assertThat(cellar.member().get("/labels").text()).contains("1 tray has no label yet", "from label 1");
        assertThat(cellar.member().get(run).text()).contains("These did not come out");
    }

    @Test
    void a_label_written_by_hand_counts_and_can_be_taken_back() {
        sow();
        Answer byHand = cellar.member().post("/labels/by-hand", Map.of("of", "mine", "take", "tray-" + peppers));

        assertThat(byHand.status()).as(byHand.text()).isEqualTo(303);
        assertThat(cellar.member().get(byHand.location()).body()).contains("/undoing");
        assertThat(cellar.member().get("/today?show=all").text()).doesNotContain("No label yet.");
    }

    @Test
    void pots_want_labels_of_their_own_as_many_as_there_are_plants() {
        sow();
        print("tray");
        cellar.tick(peppers, Map.of("step", "look", "sprouted", "9"));
        cellar.tick(peppers, Map.of("step", "under-light"));
        cellar.tick(peppers, Map.of("step", "first-feed"));
        Answer potted = cellar.tick(peppers, Map.of("step", "potted-on"));
        assertThat(potted.status()).as(potted.text()).isEqualTo(303);

        assertThat(cellar.member().get("/labels").text()).contains("9 pots have no label yet");
        print("pot");
        assertThat(cellar.group()
                        .database()
                        .sql()
                        .select(LABEL_RUN.LABELS)
                        .from(LABEL_RUN)
                        .fetch(LABEL_RUN.LABELS))
                .contains(9);
    }

    @Test
    void looking_at_the_page_gives_no_code_and_printing_gives_one() {
        sow();
        cellar.member().get("/labels");
        assertThat(cellar.group().database().sql().fetchCount(SHORT_CODE)).isZero();

        print("tray");
        assertThat(cellar.group().database().sql().fetchCount(SHORT_CODE)).isEqualTo(1);
    }

    @Test
    void only_a_coordinator_labels_a_whole_site_and_anybody_a_single_tray() {
        sow();
        String site = cellar.group()
                .database()
                .sql()
                .fetchValue("select id from site")
                .toString();
        assertThat(cellar.member().get("/labels?of=all").status()).isEqualTo(403);
        assertThat(cellar.member().get("/labels?of=site-" + site).status()).isEqualTo(403);
        assertThat(cellar.coordinator().get("/labels?of=site-" + site).text()).contains("1 tray has no label yet");
        assertThat(cellar.coordinator().get("/labels?of=sowing-" + peppers).text())
                .contains("Lantern Row");
        assertThat(cellar.coordinator().get("/labels").text()).contains("Everything of yours");
        assertThat(cellar.member()
                        .get("/labels?of=sowing-00000000-0000-0000-0000-000000000000")
                        .status())
                .isEqualTo(404);
        assertThat(cellar.member().get("/labels?of=everything").status()).isEqualTo(404);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "stock | none | Size was 'none', which is not on the list",
                "start | 31 | First label was '31'; a whole number from 1 to 30 is accepted.",
                "printer | upstairs | That printer is not on the list",
                "take | | Nothing was ticked"
            })
    void what_cannot_be_printed_is_told_and_nothing_is_marked(String field, String typed, String sentence) {
        sow();
        Map<String, String> fields =
                new HashMap<>(Map.of("of", "mine", "take", "tray-" + peppers, "stock", "letter-30", "chosen", "yes"));
        fields.put(field, typed == null ? "" : typed);

        Answer answer = cellar.member().post("/labels/runs", fields);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(cellar.group().database().sql().fetchCount(LABEL_RUN)).isZero();
    }

    @Test
    void a_label_of_five_by_five_millimetres_is_refused_with_a_sentence() {
        Map<String, String> size = Map.of("medium", "roll", "name", "tiny", "width", "0.2", "height", "0.2");

        Answer answer = cellar.member().post("/labels/sizes", size);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("A label of 0.2 × 0.2 in is too small");
        assertThat(answer.typed("name")).isEqualTo("tiny");
    }

    @Test
    void a_size_of_ones_own_is_printed_on_and_one_too_low_for_a_qr_code_says_so() {
        sow();
        Answer added = cellar.member()
                .post("/labels/sizes", Map.of("medium", "roll", "name", "low roll", "width", "2", "height", "0.4"));
        assertThat(added.status()).as(added.text()).isEqualTo(303);

        Answer page = cellar.member().get(added.location());

        assertThat(page.text()).contains("low roll, 2 × 0.4 in", "too small for a QR code");
        assertThat(cellar.member()
                        .post(
                                "/labels/sizes",
                                Map.of(
                                        "medium",
                                        "sheet",
                                        "name",
                                        "x",
                                        "width",
                                        "3",
                                        "height",
                                        "1",
                                        "pageWidth",
                                        "8.5",
                                        "pageHeight",
                                        "11",
                                        "columns",
                                        "3",
                                        "rows",
                                        "10"))
                        .text())
                .contains("lie beyond the edge of the sheet");
    }

    @Test
    void a_printer_is_measured_by_its_sheet_and_named_where_it_is_used() {
        sow();
        assertThat(cellar.member()
                        .get("/labels/printers/sheet.pdf?stock=letter-30")
                        .body())
                .startsWith("%PDF-1.");
        Answer wrong = cellar.member()
                .post(
                        "/labels/printers",
                        Map.of("stock", "letter-30", "printer", "upstairs", "across", "90", "down", "2"));
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.text()).contains("Line across was '90'", "Line down was '2'");

        Answer kept = cellar.member()
                .post(
                        "/labels/printers",
                        Map.of("stock", "letter-30", "printer", "upstairs", "across", "168", "down", "229"));

        assertThat(kept.status()).as(kept.text()).isEqualTo(303);
        String printer = Cellar.first(cellar.member().get("/labels").body(), "value=\"([0-9a-f-]{36})\">upstairs");
        assertThat(cellar.member().get("/labels?chosen=yes&printer=" + printer).text())
                .contains("scaled for upstairs");
    }

    @Test
    void a_screen_is_adjusted_for_this_device_alone() {
        sow();
        String before = Cellar.first(cellar.member().get("/labels").body(), "<svg width=\"([0-9.]+)mm\"");
        cellar.member().post("/labels/screen", Map.of("larger", "10", "of", "mine"));
        String after = Cellar.first(cellar.member().get("/labels").body(), "<svg width=\"([0-9.]+)mm\"");

        assertThat(Double.parseDouble(after))
                .isCloseTo(1.1 * Double.parseDouble(before), org.assertj.core.data.Offset.offset(0.02));
        cellar.member().setCookie("warmshelf-screen", "a thousand");
        assertThat(cellar.member().get("/labels").body()).contains("<svg width=\"" + before);
        assertThat(cellar.member().get("/labels").text()).contains("quarter dollar");
    }

    @Test
    void racks_shelves_and_mats_are_labelled_too() {
        Answer page = cellar.member().get("/labels?of=places");
        List<String> keys = Cellar.all(page.body(), "value=\"(place-[0-9a-f-]{36})\"");

        assertThat(keys).hasSize(4);
        assertThat(page.text()).contains("4 places can be labelled");
    }
}
