package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

/** A rack on which pests were found: who is told, what moves, and who clears it. */
class HeldRackPagesTest {
    private static final String HELD = "Rack North rack is held: pests";

    private Cellar cellar;
    private Browser onDuty;
    private String peppers = "";

    @BeforeEach
    void pestsOnTheRack() {
        cellar = Cellar.open();
        onDuty = cellar.group().signedIn(cellar.group().onDuty());
        anotherRack();
        peppers = cellar.ask(Cellar.peppers());
        String placement = "/requests/" + peppers + "/placement";
        Map<String, String> fields = Cellar.hiddenFields(
                cellar.coordinator().get("/requests/" + peppers).body(), placement);
        fields.put("from", "2027-03-01");
        assertThat(cellar.coordinator().post(placement, fields).status()).isEqualTo(303);
        cellar.tick(peppers, Map.of("step", "sown", "seenOn", "2027-03-01"));
        Answer noted = onDuty.post(
                "/sowings/" + peppers + "/entries",
                Map.of("step", "look", "seenOn", "2027-03-01", "problem", "pests", "note", "webs", "sprouted", "0"));
        assertThat(noted.status()).as(noted.text()).isEqualTo(303);
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    private void anotherRack() {
        String site = Cellar.first(cellar.coordinator().get("/sites").body(), "/sites/([0-9a-f-]{36})/racks/new");
        cellar.coordinator().post("/sites/" + site + "/racks", Map.of("name", "South rack", "walkOrder", "2"));
        List<String> racks =
                Cellar.all(cellar.coordinator().get("/sites").body(), "/sites/racks/([0-9a-f-]{36})/shelves/new");
        cellar.coordinator()
                .post(
                        "/sites/racks/" + racks.get(1) + "/shelves",
                        Map.of("fromTop", "1", "litPlaces", "0", "lightWatts", "0"));
        String shelf = lastShelf();
        cellar.coordinator()
                .post(
                        "/sites/shelves/" + shelf + "/mats",
                        Map.of(
                                "name",
                                "M3",
                                "walkOrder",
                                "1",
                                "places",
                                "2",
                                "watts",
                                "45",
                                "low",
                                "68",
                                "high",
                                "90",
                                "usual",
                                "79"));
    }

    private String lastShelf() {
        List<String> shelves =
                Cellar.all(cellar.coordinator().get("/sites").body(), "/sites/shelves/([0-9a-f-]{36})/mats/new");
        return shelves.get(shelves.size() - 1);
    }

    @Test
    void everyone_whose_tray_lies_there_is_told_and_the_others_are_not() {
        assertThat(cellar.member().get("/today").text()).contains(HELD, "by Priya, Mon 1 Mar: webs");
        assertThat(cellar.group()
                        .signedIn(cellar.group().coordinator())
                        .get("/today")
                        .text())
                .contains(HELD);
        assertThat(onDuty.get("/today?show=mine").body()).doesNotContain("Clear rack");
    }

    @Test
    void no_other_request_is_offered_a_place_there_and_none_is_taken_there_until_it_is_cleared() {
        String another = cellar.ask(Cellar.peppers());
        String placement = "/requests/" + another + "/placement";
        String page = cellar.coordinator().get("/requests/" + another).body();
        String held = Cellar.first(cellar.coordinator().get("/racks").body(), "data-place=\"([0-9a-f-]{36})\"");
        Map<String, String> there = Map.of("place", held, "quarter", "3", "from", "2027-03-02", "celsius", "79");

        assertThat(page)
                .contains("Rack North rack is held since Mon 1 Mar", "Mat M3")
                .doesNotContain("M1, place");
        Answer refused = cellar.coordinator().post(placement, there);
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.text()).contains("nothing new is laid on it until a coordinator has cleared it");

        cellar.coordinator().post(clearing(), Map.of());
        assertThat(cellar.coordinator().post(placement, there).status()).isEqualTo(303);
    }

    @Test
    void the_racks_page_marks_a_held_rack_and_says_what_was_found_on_which_sowing() {
        Answer racks = cellar.member().get("/racks");

        assertThat(racks.text())
                .contains("Rack North rack: held", "is held since Mon 1 Mar: pests", "Found on Pepper", "by Priya")
                .contains("Hall cellar, rack North rack (held), shelf 1");
        assertThat(racks.body()).contains("/sowings/" + peppers).doesNotContain("/clearing");
        assertThat(cellar.member().get("/racks?day=2027-02-28").text()).doesNotContain("is held since");
        assertThat(cellar.coordinator().get("/racks").body()).contains(clearing());
    }

    @Test
    void looking_and_saving_both_say_that_it_may_not_go_to_another_rack() {
        String stay = stay();
        String page = cellar.coordinator().get("/stays/" + stay).body();
        String spot = Cellar.first(page.substring(page.indexOf("M3")), "value=\"([0-9a-f-]{36}/[1-4])\"");

        assertThat(page).contains("M3, place 1, left half: its rack is held");
        assertThat(cellar.coordinator()
                        .get("/stays/" + stay + "/move?spot=" + spot)
                        .text())
                .contains("Rack North rack is held since Mon 1 Mar, because of pests or virus");
        Answer moved = cellar.coordinator()
                .post("/stays/" + stay + "/move", Map.of("spot", spot, "version", "1", "from", "2027-03-01"));
        assertThat(moved.status()).isGreaterThanOrEqualTo(400);
        assertThat(moved.text()).contains("is held since");
    }

    @Test
    void to_a_quarantine_shelf_it_may_go_and_nothing_is_offered_there() {
        String change = "/sites/shelves/" + lastShelf() + "/change";
        Answer named = cellar.coordinator()
                .post(
                        change,
                        Map.of(
                                "fromTop",
                                "1",
                                "litPlaces",
                                "0",
                                "lightWatts",
                                "0",
                                "version",
                                "1",
                                "quarantine",
                                "yes"));
        assertThat(named.status()).as(named.text()).isEqualTo(303);
        assertThat(cellar.coordinator().get(change).body()).containsPattern("name=\"quarantine\"[^>]*checked");
        assertThat(cellar.coordinator().get("/sites").text()).contains("Shelf 1, the top one: quarantine");
        String another = cellar.ask(Cellar.peppers());

        assertThat(cellar.coordinator().get("/stays/" + stay()).text()).doesNotContain("its rack is held");
        assertThat(cellar.coordinator().get("/requests/" + another).text()).doesNotContain("M3");
    }

    @Test
    void only_a_coordinator_clears_it_and_twice_counts_once() {
        String clearing = clearing();

        assertThat(cellar.member().post(clearing, Map.of()).status()).isEqualTo(403);
        assertThat(cellar.coordinator().post(clearing, Map.of("then", "/today")).location())
                .isEqualTo("/today");
        assertThat(cellar.coordinator().get("/today").text())
                .contains("The rack is cleared")
                .doesNotContain(HELD);
        cellar.coordinator().post(clearing, Map.of());
        assertThat(cellar.coordinator().get("/today").text()).contains("cleared before");
        assertThat(cellar.member().get("/today").text()).doesNotContain(HELD);
    }

    private String clearing() {
        return Cellar.first(cellar.coordinator().get("/today").body(), "action=\"(/racks/[^\"]*/clearing)\"");
    }

    private String stay() {
        return Cellar.first(cellar.coordinator().get("/racks").body(), "/stays/([0-9a-f-]{36})");
    }
}
