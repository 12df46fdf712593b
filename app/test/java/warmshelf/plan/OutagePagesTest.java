package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.STAY;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

/** A mat goes out of service with half trays of peppers on it; mat M3 beside it is empty. */
class OutagePagesTest {
    private Cellar cellar;
    private String first;
    private String second;

    @BeforeEach
    void layPeppers() {
        cellar = Cellar.open();
        first = cellar.ask(Cellar.peppers());
        second = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(first);
        cellar.placeAsSuggested(second);
        assertThat(mats()).containsExactly("M1", "M1");
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void what_lies_there_is_listed_and_all_of_it_is_moved_as_proposed_in_one_press() {
        addMat("M3");

        Answer out = takeOut();
        assertThat(out.location()).startsWith("/plans/out-of-service/");
        Answer page = cellar.coordinator().get(out.location());
        assertThat(page.text())
                .contains(
                        "2 stays lie there; each has another place that suits it",
                        "Pepper, sweet and mild hot · Lantern Row of Tom",
                        "mat M3 · place 1, left half",
                        "mat M3 · place 1, right half",
                        "Move all 2 as proposed");

        Answer moved = cellar.coordinator().post(out.location() + "/moves", all(page));

        assertThat(moved.status()).isEqualTo(303);
        assertThat(mats()).containsExactly("M3", "M3");
        assertThat(cellar.coordinator().get(out.location()).text())
                .contains("2 moved. Nothing lies there any more on those days.");
    }

    @Test
    void one_is_moved_alone_and_the_rest_stays_listed() {
        addMat("M3");
        String path = takeOut().location();
        List<String> keys = keys(cellar.coordinator().get(path));

        Answer moved = cellar.coordinator().post(path + "/moves", Map.of("take", keys.get(1)));

        assertThat(moved.status()).isEqualTo(303);
        assertThat(mats()).containsExactlyInAnyOrder("M1", "M3");
        assertThat(cellar.coordinator().get(path).text())
                .contains("1 moved. 1 still lies there.", "1 stay lies there; it has another place that suits it");
    }

    @Test
    void when_anything_has_changed_since_nothing_moves_and_new_places_are_shown() {
        addMat("M3");
        String path = takeOut().location();
        Answer seen = cellar.coordinator().get(path);
        cellar.coordinator().post(path + "/moves", Map.of("take", keys(seen).get(0)));

        Answer late = cellar.coordinator().post(path + "/moves", all(seen));

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("Nothing was moved", "has changed since you looked", "1 stay lies there");
        assertThat(mats()).containsExactlyInAnyOrder("M1", "M3");
        assertThat(cellar.coordinator()
                        .post(path + "/moves", Map.of("take", ""))
                        .status())
                .isEqualTo(409);
    }

    @Test
    void what_finds_no_other_place_is_said_to_and_stays() {
        String path = takeOut().location();

        assertThat(cellar.coordinator().get(path).text())
                .contains(
                        "2 stays lie there; none has another place that suits.",
                        "It is proven that no other arrangement places more.",
                        "All mats warm enough for it are out of service on its days.",
                        "It fits once one of them is back or another is set up.")
                .doesNotContain("Move all");
        assertThat(cellar.member().get(path).text())
                .contains("What lies there", "A coordinator moves it.")
                .doesNotContain("Move it there");
        assertThat(cellar.member().post(path + "/moves", Map.of("take", "x")).status())
                .isEqualTo(403);
        assertThat(cellar.coordinator()
                        .get("/plans/out-of-service/" + UUID.randomUUID())
                        .status())
                .isEqualTo(404);
    }

    @Test
    void an_outage_is_told_on_racks_weeks_and_today_and_gone_when_the_mat_is_back() {
        String path = takeOut().location();

        assertThat(cellar.member().get("/racks?day=2027-03-20").body())
                .contains("out of service to Mon 1 Nov", "Broken cord", "url(#hatching)");
        assertThat(cellar.member().get("/racks?day=2027-11-02").body()).doesNotContain("Broken cord");
        assertThat(cellar.member().get("/weeks").body())
                .contains("out of service to Mon 1 Nov", "Broken cord", "url(#hatching)");
        assertThat(cellar.coordinator().get("/today").text())
                .contains("Mat M1 is out of service", "Broken cord", "2 stays lie there");
        assertThat(cellar.member().get("/today").text()).contains("Something of yours lies there");

        cellar.coordinator().post(path + "/end");

        assertThat(cellar.member().get("/racks").body()).doesNotContain("Broken cord");
        assertThat(cellar.coordinator().get("/today").text()).doesNotContain("out of service");
    }

    @Test
    void the_page_of_a_mat_is_reached_from_racks_weeks_and_sites() {
        String mat = "href=\"/mats/" + firstMat() + "\"";

        for (String page : List.of("/racks", "/weeks", "/sites")) {
            assertThat(cellar.member().get(page).body()).as(page).contains(mat);
        }
    }

    private Answer takeOut() {
        Map<String, String> fields =
                Map.of("mat", firstMat(), "first", "2027-03-01", "last", "2027-11-01", "reason", "Broken cord");
        Answer out = cellar.coordinator().post("/plans/out-of-service", fields);
        assertThat(out.status()).as(out.text()).isEqualTo(303);
        return out;
    }

    private String firstMat() {
        return Cellar.first(cellar.coordinator().get("/sites").body(), "/sites/mats/([0-9a-f-]{36})/change");
    }

    private void addMat(String name) {
        String shelf =
                Cellar.first(cellar.coordinator().get("/sites").body(), "/sites/shelves/([0-9a-f-]{36})/mats/new");
        Map<String, String> fields = new HashMap<>(Map.of(
                "name",
                name,
                "walkOrder",
                "3",
                "places",
                "1",
                "watts",
                "45",
                "low",
                "68",
                "high",
                "90",
                "usual",
                "79"));
        assertThat(cellar.coordinator()
                        .post("/sites/shelves/" + shelf + "/mats", fields)
                        .status())
                .isEqualTo(303);
    }

    private static List<String> keys(Answer page) {
        return Cellar.all(page.body(), "name=\"take\" value=\"([^\" ]+)\"");
    }

    /** The form on top sends every key at once. */
    private static Map<String, String> all(Answer page) {
        return Map.of("take", Cellar.first(page.body(), "name=\"take\" value=\"([^\" ]+ [^\"]+)\""));
    }

    private List<String> mats() {
        return cellar.group()
                .database()
                .sql()
                .select(MAT.NAME)
                .from(STAY)
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .join(MAT)
                .on(MAT.ID.eq(PLACE.MAT_ID))
                .where(
                        STAY.SOWING_ID.in(UUID.fromString(first), UUID.fromString(second)),
                        STAY.FROM_DAY.lt(STAY.TO_DAY))
                .orderBy(MAT.NAME)
                .fetch(MAT.NAME);
    }
}
