package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHELF;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.STAY;

import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

/** What a coordinator of the shed alone is offered, and what a form that names the cellar is told. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class SiteCoordinatorPagesTest {
    private static final String ELSEWHERE = "at a site that you do not coordinate, so nothing was changed";

    private Cellar cellar;
    private DSLContext sql;
    private Browser priya;
    private String shed;
    private String hall;
    private String lies;
    private String waiting;

    @BeforeAll
    void openAShed() {
        cellar = Cellar.open();
        sql = cellar.group().database().sql();
        lies = cellar.ask(Cellar.peppers());
        assertThat(cellar.placeAsSuggested(lies).status()).isEqualTo(303);
        given("/sites", Map.of("name", "Shed", "walkOrder", "2", "amps", "15", "volts", "120", "note", ""));
        shed = site("Shed");
        hall = site("Hall cellar");
        given("/sites/" + shed + "/racks", Map.of("name", "Door rack", "walkOrder", "1"));
        String rack = sql.select(RACK.ID)
                .from(RACK)
                .where(RACK.NAME.eq("Door rack"))
                .fetchSingle(RACK.ID)
                .toString();
        given("/sites/racks/" + rack + "/shelves", Map.of("fromTop", "1", "litPlaces", "0", "lightWatts", "0"));
        String shelf = sql.select(SHELF.ID)
                .from(SHELF)
                .where(SHELF.RACK_ID.eq(UUID.fromString(rack)))
                .fetchSingle(SHELF.ID)
                .toString();
        String page = cellar.coordinator()
                .get("/sites/shelves/" + shelf + "/mats/new")
                .body();
        boolean fahrenheit = page.contains("°F");
        given(
                "/sites/shelves/" + shelf + "/mats",
                Map.of(
                        "name",
                        "S1",
                        "walkOrder",
                        "1",
                        "places",
                        "2",
                        "watts",
                        "45",
                        "low",
                        fahrenheit ? "68" : "20",
                        "high",
                        fahrenheit ? "90" : "32",
                        "usual",
                        fahrenheit ? "79" : "26"));
        given("/people/" + cellar.group().onDuty().id() + "/sites", Map.of("site", shed));
        priya = cellar.group().signedIn(cellar.group().onDuty());
        waiting = cellar.ask(Cellar.peppers());
    }

    private void given(String path, Map<String, String> fields) {
        Answer answer = cellar.coordinator().post(path, fields);
        assertThat(answer.status()).as(path + " " + answer.text()).isEqualTo(303);
    }

    private String site(String name) {
        return sql.select(SITE.ID)
                .from(SITE)
                .where(SITE.NAME.eq(name))
                .fetchSingle(SITE.ID)
                .toString();
    }

    private UUID mat(String name) {
        return sql.select(MAT.ID).from(MAT).where(MAT.NAME.eq(name)).fetchSingle(MAT.ID);
    }

    private UUID place(String mat, int number) {
        return sql.select(PLACE.ID)
                .from(PLACE)
                .where(PLACE.MAT_ID.eq(mat(mat)), PLACE.NUMBER.eq(number))
                .fetchSingle(PLACE.ID);
    }

    private UUID stayOf(String sowing) {
        return sql.select(STAY.ID)
                .from(STAY)
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .where(STAY.SOWING_ID.eq(UUID.fromString(sowing)), PLACE.KIND.eq("mat"))
                .fetchSingle(STAY.ID);
    }

    @AfterAll
    void close() {
        cellar.close();
    }

    private static void isRefused(Answer answer) {
        assertThat(answer.status()).as(answer.text()).isEqualTo(403);
        assertThat(answer.text()).contains(ELSEWHERE);
    }

    @Test
    @Order(1)
    void people_say_which_sites_somebody_coordinates() {
        assertThat(cellar.coordinator().get("/people").text()).contains("Coordinator of Shed");
        assertThat(cellar.coordinator()
                        .get("/people/" + cellar.group().onDuty().id() + "/sites")
                        .body())
                .contains("value=\"" + shed + "\" checked")
                .doesNotContain("value=\"" + hall + "\" checked");
    }

    @Test
    @Order(1)
    void the_last_coordinator_of_the_whole_group_stays_one() {
        String ilse = "/people/" + cellar.group().coordinator().id() + "/sites";

        Answer answer = cellar.coordinator().post(ilse, Map.of("site", hall));

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text()).contains("Ilse Brandt is the only coordinator of the whole group");
    }

    @Test
    @Order(1)
    void a_site_that_is_not_there_is_told_and_nothing_changes() {
        Answer answer = cellar.coordinator()
                .post(
                        "/people/" + cellar.group().onDuty().id() + "/sites",
                        Map.of("site", UUID.randomUUID().toString()));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("One of the sites is not there any more");
        assertThat(cellar.coordinator().get("/people").text()).contains("Coordinator of Shed");
    }

    @Test
    @Order(1)
    void what_waits_is_suggested_at_their_site_and_the_plan_is_not_theirs() {
        String page = priya.get("/requests").text();

        assertThat(page).contains("Requests: 1", "Mat S1, place 1").doesNotContain("Plan all at once", "Mat M1");
        assertThat(priya.get("/requests/" + waiting).text()).contains("S1").doesNotContain("M1, place");
        assertThat(priya.get("/today").body())
                .contains("href=\"/requests\"")
                .doesNotContain("href=\"/plans\"", "href=\"/handbook\"");
    }

    @Test
    @Order(1)
    void their_site_comes_first_on_the_boards_and_only_there_can_things_be_moved() {
        String racks = priya.get("/racks").body();

        assertThat(racks.indexOf("Rack Door rack")).isPositive().isLessThan(racks.indexOf("Rack North rack"));
        assertThat(racks).contains("data-place=\"" + place("S1", 1)).doesNotContain("data-place=\"" + place("M1", 1));
        assertThat(priya.get("/weeks").body())
                .contains("data-place=\"" + place("S1", 1))
                .doesNotContain("data-place=\"" + place("M1", 1));
        assertThat(priya.get("/stays/" + stayOf(lies)).text()).doesNotContain("Move it", "Free the place");
        assertThat(priya.get("/sites").body())
                .contains("/sites/" + shed + "/racks/new")
                .doesNotContain("/sites/" + hall + "/racks/new", "/sites/new", "/sites/" + shed + "/change");
    }

    @Test
    @Order(1)
    void a_request_is_not_laid_at_another_site() {
        Map<String, String> there = Map.of("place", place("M1", 2).toString(), "quarter", "1", "from", "2027-03-20");

        isRefused(priya.post("/requests/" + waiting + "/placement", there));
        assertThat(priya.get("/requests/" + waiting + "/move?spot=" + place("M1", 2) + "/1")
                        .status())
                .isEqualTo(403);
    }

    @Test
    @Order(1)
    void what_lies_at_another_site_is_theirs_neither_to_move_nor_to_free_nor_to_take_back() {
        isRefused(priya.post("/stays/" + stayOf(lies) + "/release", Map.of("reason", "Room", "version", "1")));
        isRefused(
                priya.post("/stays/" + stayOf(lies) + "/move", Map.of("spot", place("S1", 2) + "/1", "version", "1")));
        isRefused(priya.post("/requests/" + lies + "/return"));
    }

    @Test
    @Order(1)
    void another_sites_mats_are_neither_turned_nor_taken_out() {
        Map<String, String> days = Map.of(
                "mat", mat("M1").toString(), "first", "2027-03-02", "last", "2027-03-03", "reason", "A worn cord");

        isRefused(priya.post("/plans/out-of-service", days));
        isRefused(priya.post("/mats/" + mat("M1") + "/set-points"));
        assertThat(priya.get("/mats/" + mat("M1")).text()).doesNotContain("Turn it");
        assertThat(priya.get("/mats/" + mat("S1")).text()).contains("Turn it");
        assertThat(priya.get("/plans/out-of-service").body())
                .contains("value=\"" + mat("S1"))
                .doesNotContain("value=\"" + mat("M1"));
    }

    @Test
    @Order(1)
    void the_rota_of_another_site_is_not_theirs() {
        String tom = cellar.group().member().id().toString();

        isRefused(priya.post("/duty", Map.of("from", "2027-03-01", "duty/" + hall + "/2027-03-02", tom)));
        isRefused(priya.post("/duty/hours", Map.of("hour-" + hall, "17:00")));
        isRefused(priya.post("/duty/proposal", Map.of("duty/" + hall + "/2027-03-02", tom)));
        assertThat(priya.post("/duty", Map.of("from", "2027-03-01", "duty/" + shed + "/2027-03-02", tom))
                        .status())
                .isEqualTo(303);
        assertThat(priya.get("/duty").body())
                .contains("name=\"duty/" + shed, "name=\"hour-" + shed)
                .doesNotContain("name=\"duty/" + hall, "name=\"hour-" + hall);
    }

    @Test
    @Order(1)
    void a_rack_is_not_carried_to_another_site() {
        UUID rack =
                sql.select(RACK.ID).from(RACK).where(RACK.NAME.eq("Door rack")).fetchSingle(RACK.ID);

        isRefused(priya.post(
                "/sites/racks/" + rack + "/change",
                Map.of("name", "Door rack", "walkOrder", "1", "version", "1", "site", hall)));
        assertThat(priya.get("/sites/racks/" + rack + "/change").body()).doesNotContain("value=\"" + hall);
    }

    @Test
    @Order(2)
    void at_their_own_site_they_place_move_and_take_back() {
        Answer placed = priya.post("/requests/placements");
        assertThat(placed.status()).isEqualTo(303);
        UUID stay = stayOf(waiting);
        String where = priya.get("/stays/" + stay).text();
        assertThat(where).contains("Shed", "S1", "Move it").doesNotContain("M1");

        Answer away = priya.post("/stays/" + stay + "/move", Map.of("spot", place("M1", 2) + "/1", "version", "1"));
        isRefused(away);
        Answer moved = priya.post("/stays/" + stay + "/move", Map.of("spot", place("S1", 2) + "/1", "version", "1"));
        assertThat(moved.status()).as(moved.text()).isEqualTo(303);
        assertThat(priya.post("/stays/" + stayOf(waiting) + "/undo").status()).isEqualTo(303);
        assertThat(priya.post("/requests/" + waiting + "/return").status()).isEqualTo(303);
    }

    @Test
    @Order(3)
    void with_no_site_left_they_are_a_member_again() {
        given("/people/" + cellar.group().onDuty().id() + "/sites", Map.of());

        assertThat(priya.get("/requests").status()).isEqualTo(403);
        assertThat(priya.get("/requests").text()).contains("This page is for coordinators");
        assertThat(cellar.coordinator().get("/people").text()).doesNotContain("Coordinator of Shed");
    }
}
