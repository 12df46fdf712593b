package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.STAY;

import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.db.generated.tables.records.StayRecord;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.group.SessionStore;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.words.DayWords;

class StayPagesTest {
    private Cellar cellar;
    private String sowing;
    private StayRecord stay;
    private List<UUID> places;

    @BeforeEach
    void placePeppers() {
        cellar = Cellar.open();
        sowing = cellar.ask(Cellar.peppers());
        assertThat(cellar.placeAsSuggested(sowing).status()).isEqualTo(303);
        stay = stayOf(sowing);
        String page = cellar.coordinator().get("/stays/" + stay.getId()).body();
        places = Cellar.all(page, "<option value=\"([0-9a-f-]{36})/1\"").stream()
                .map(UUID::fromString)
                .toList();
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void members_look_and_coordinators_move() {
        String path = "/stays/" + stay.getId();

        assertThat(cellar.member().get(path).text())
                .contains("Lantern Row", "Of Tom · the sowing", "mat M1", "place 1, left half")
                .doesNotContain("Move it", "Free the place");
        assertThat(cellar.member().get(path + "/move").status()).isEqualTo(403);
        for (String action : new String[] {"/move", "/undo", "/release"}) {
            assertThat(cellar.member().post(path + action).status()).as(action).isEqualTo(403);
        }
        assertThat(cellar.coordinator().get(path).body())
                .contains(
                        "Move it",
                        "A day later",
                        "M1, place 1, left half: where it is",
                        "M1, place 2, right half: free");
    }

    @ParameterizedTest
    @ValueSource(strings = {"17", "nonsense", "1-1-1-1-1", "00000000-0000-0000-0000-000000000007"})
    void an_address_that_names_no_stay_is_not_found(String id) {
        assertThat(cellar.coordinator().get("/stays/" + id).status()).isEqualTo(404);
        assertThat(cellar.coordinator().get("/stays/" + id + "/move").status()).isEqualTo(404);
        for (String action : new String[] {"/move", "/undo", "/release"}) {
            assertThat(cellar.coordinator().post("/stays/" + id + action).status())
                    .as(action)
                    .isEqualTo(404);
        }
    }

    @Test
    void what_lies_there_no_longer_is_told_so_to_whoever_moves_it() {
        cellar.group().clock().advance(Duration.ofDays(90));

        Answer answer = cellar.group()
                .signedIn(cellar.group().coordinator())
                .post("/stays/" + stay.getId() + "/move", Map.of("version", "1"));

        assertThat(answer.status()).isEqualTo(409);
        assertThat(stayOf(sowing)).isEqualTo(stay);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "from | 2027-02-28 | The first day was 2027-02-28, which has passed; today is 2027-03-01.",
                "from | 2030-03-10 | a day from 2027-03-01 to 2028-03-01 is accepted.",
                "from | soon | The first day was 'soon'; a date such as 2027-03-01 is accepted.",
                "celsius | hot | The set-point in °F was 'hot'",
                "spot | 00000000-0000-0000-0000-000000000007/1 | The place is not one that this could lie on",
                "spot | nonsense | The place is not one that this could lie on",
                "version | 0 | The version was '0'"
            })
    void a_wish_that_cannot_be_is_refused_with_its_sentence(String field, String typed, String sentence) {
        String path = "/stays/" + stay.getId() + "/move";
        String query = "?" + field + "=" + typed;

        Answer page = cellar.coordinator().get(path + query);
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.text()).contains(sentence);
        assertThat(cellar.coordinator().getJson(path + query).status()).isEqualTo(422);
        assertThat(cellar.coordinator().getJson(path + query).body()).contains("\"error\":\"The ");
        assertThat(cellar.coordinator().post(path, Map.of(field, typed)).status())
                .isEqualTo(422);
        assertThat(stayOf(sowing)).isEqualTo(stay);
    }

    @Test
    void a_quarter_that_a_half_tray_cannot_lie_on_is_refused() {
        Answer answer = cellar.coordinator().get(moveTo(places.get(0), 2, ""));

        assertThat(answer.status()).isEqualTo(422);
    }

    @Test
    void a_move_is_shown_first_and_saved_then() {
        LocalDate later = stay.getFromDay().plusDays(1);

        Answer shown = cellar.coordinator().get(moveTo(places.get(1), 3, "&from=" + later));
        assertThat(shown.text()).contains("What would change", "place 2, right half", "Fits.");
        assertThat(stayOf(sowing)).as("nothing is saved yet").isEqualTo(stay);

        Answer saved = save(shown);
        assertThat(saved.status()).isEqualTo(303);
        assertThat(saved.location()).isEqualTo("/stays/" + stay.getId());
        assertThat(stayOf(sowing).getPlaceId()).isEqualTo(places.get(1));
        assertThat(stayOf(sowing).getFirstQuarter()).isEqualTo(3);
        assertThat(stayOf(sowing).getFromDay()).isEqualTo(later);
        assertThat(stayOf(sowing).getId()).isEqualTo(stay.getId());
    }

    @Test
    void what_clashes_is_named_and_cannot_be_saved() {
        Map<String, String> late = Cellar.peppers();
        late.put("variety", "Other Row");
        String other = cellar.ask(late);
        cellar.placeAsSuggested(other);
        StayRecord taken = stayOf(other);

        Answer shown = cellar.coordinator().get(moveTo(taken.getPlaceId(), taken.getFirstQuarter(), ""));
        assertThat(shown.text())
                .contains("Clashes", "is taken by Tom's Other Row")
                .doesNotContain("Save the move");

        Answer forced = cellar.coordinator()
                .post(
                        "/stays/" + stay.getId() + "/move",
                        Map.of("spot", taken.getPlaceId() + "/" + taken.getFirstQuarter(), "version", "1"));
        assertThat(forced.status()).isEqualTo(409);
        assertThat(forced.text()).contains("Not saved", "is taken by Tom's Other Row");
        assertThat(stayOf(sowing)).isEqualTo(stay);
    }

    @Test
    void a_mat_that_cannot_be_warm_enough_is_told_in_the_readers_unit() {
        UUID cool = places.get(2);

        assertThat(cellar.coordinator().get(moveTo(cool, 1, "")).text())
                .contains("Mat M2 can hold 64–72 °F")
                .doesNotContain("°C");
    }

    @Test
    void a_mat_out_of_service_never_fits_wherever_one_looks_and_is_not_saved() {
        String mat = firstMat();
        Map<String, String> out = Map.of(
                "mat",
                mat,
                "first",
                stay.getToDay().minusDays(2).toString(),
                "last",
                stay.getToDay().plusDays(2).toString(),
                "reason",
                "the cord is frayed");
        Answer seenBefore = cellar.coordinator().get(moveTo(places.get(1), 1, ""));
        assertThat(cellar.coordinator().post("/plans/out-of-service", out).status())
                .isEqualTo(303);

        assertThat(cellar.coordinator().get(moveTo(places.get(1), 1, "")).text())
                .contains("Clashes", "Mat M1 is out of service", "the cord is frayed")
                .doesNotContain("Fits.");
        assertThat(cellar.coordinator().getJson(moveTo(places.get(1), 1, "")).body())
                .contains("\"fits\":false", "Mat M1 is out of service");
        assertThat(cellar.coordinator().get("/stays/" + stay.getId()).body())
                .contains("M1, place 2, left half: out of service ");
        Answer saved = save(seenBefore);
        assertThat(saved.status()).isEqualTo(409);
        assertThat(saved.text()).contains("Not saved", "Mat M1 is out of service");
        assertThat(stayOf(sowing)).isEqualTo(stay);
    }

    @Test
    void moving_onto_a_mat_that_is_turned_during_the_stay_follows_its_days() {
        String mat = firstMat();
        LocalDate turned = stay.getFromDay().plusDays(3);
        Map<String, String> turn =
                Map.of("first", turned.toString(), "last", turned.plusDays(60).toString(), "celsius", "84");
        assertThat(cellar.coordinator()
                        .post("/mats/" + mat + "/set-points", turn)
                        .status())
                .isEqualTo(303);

        Answer shown = cellar.coordinator().get(moveTo(places.get(1), 3, ""));
        assertThat(shown.text()).contains("Fits.", "from " + DayWords.day(turned) + " hot 84 °F");
        assertThat(save(shown).status()).isEqualTo(303);
        assertThat(stayOf(sowing).getPlaceId()).isEqualTo(places.get(1));
    }

    @Test
    void what_was_shown_is_not_saved_when_the_mat_was_turned_since() {
        Answer shown = cellar.coordinator().get(moveTo(places.get(1), 3, ""));
        Map<String, String> turn = Map.of(
                "first",
                stay.getFromDay().plusDays(3).toString(),
                "last",
                stay.getFromDay().plusDays(60).toString(),
                "celsius",
                "84");
        cellar.coordinator().post("/mats/" + firstMat() + "/set-points", turn);

        Answer saved = save(shown);

        assertThat(saved.status()).isEqualTo(409);
        assertThat(saved.text()).contains("A mat was turned or a day has passed since you looked", "Fits.");
        assertThat(stayOf(sowing)).isEqualTo(stay);
        assertThat(save(saved).status()).isEqualTo(303);
    }

    @Test
    void a_script_gets_the_same_as_words() {
        Answer fits = cellar.coordinator().getJson(moveTo(places.get(1), 1, ""));
        assertThat(fits.status()).isEqualTo(200);
        assertThat(fits.body())
                .contains("\"fits\":true", "\"same\":false", "\"version\":1", "place 2, left half", "\"clashes\":[]");

        Answer here = cellar.coordinator().getJson("/stays/" + stay.getId() + "/move");
        assertThat(here.body()).contains("\"same\":true");
        assertThat(cellar.coordinator().getJson(moveTo(places.get(2), 1, "")).body())
                .contains("\"fits\":false", "Mat M2 can hold");
    }

    @Test
    void the_second_of_two_coordinators_sees_what_changed_and_may_save_what_they_wanted() {
        Browser ines = anotherCoordinator();
        String forInes = "/stays/" + stay.getId() + "/move?spot=" + places.get(1) + "/1";
        Answer seenByInes = ines.get(forInes);
        Answer seenByIlse = cellar.coordinator().get(moveTo(places.get(1), 3, ""));
        assertThat(post(ines, seenByInes).status()).isEqualTo(303);
        cellar.group().clock().advance(Duration.ofSeconds(80));

        Answer overtaken = save(seenByIlse);

        assertThat(overtaken.status()).isEqualTo(409);
        assertThat(overtaken.text())
                .contains(
                        "Ines moved this to mat M1, place 2, left half, from",
                        "a minute ago.",
                        "What you wanted is kept below.",
                        "place 2, right half");
        assertThat(stayOf(sowing).getFirstQuarter()).isEqualTo(1);
        assertThat(save(overtaken).status()).isEqualTo(303);
        assertThat(stayOf(sowing).getFirstQuarter()).isEqualTo(3);
    }

    @Test
    void ones_own_last_move_is_taken_back_by_a_button_beside_the_notice() {
        save(cellar.coordinator().get(moveTo(places.get(1), 3, "&back=/racks?day=2027-03-20")));
        Answer board = cellar.coordinator().get("/racks?day=2027-03-20");
        String undo = Cellar.first(board.body(), "action=\"(/stays/[^\"]*/undo[^\"]*)\"");

        Answer undone = cellar.coordinator().post(undo);

        assertThat(undone.status()).isEqualTo(303);
        assertThat(undone.location()).isEqualTo("/racks?day=2027-03-20");
        assertThat(stayOf(sowing).getPlaceId()).isEqualTo(stay.getPlaceId());
        assertThat(stayOf(sowing).getToDay()).isEqualTo(stay.getToDay());
        assertThat(cellar.coordinator().get("/racks").body()).doesNotContain("/undo");
        assertThat(cellar.coordinator().post(undo).status()).as("once").isEqualTo(409);
    }

    @Test
    void nobody_takes_back_somebody_elses_move() {
        save(cellar.coordinator().get(moveTo(places.get(1), 3, "")));

        Answer answer = anotherCoordinator().post("/stays/" + stay.getId() + "/undo");

        assertThat(answer.status()).isIn(403, 409);
        assertThat(stayOf(sowing).getPlaceId()).isEqualTo(places.get(1));
    }

    @Test
    void an_address_to_go_back_to_that_is_no_board_is_not_followed() {
        Answer shown = cellar.coordinator().get(moveTo(places.get(1), 3, "&back=//elsewhere.example/racks"));

        assertThat(save(shown).location()).isEqualTo("/stays/" + stay.getId());
    }

    @Test
    void what_lies_there_is_carried_and_its_history_kept() {
        LocalDate day = stay.getFromDay().plusDays(2);
        passUntil(stay.getFromDay());
        assertThat(cellar.tick(sowing, Map.of("step", "sown")).status()).isEqualTo(303);
        passUntil(day);

        Answer page = cellar.coordinator().get("/stays/" + stay.getId());
        assertThat(page.text()).contains("It lies there already").doesNotContain("A day later");
        assertThat(cellar.coordinator()
                        .get(moveTo(places.get(1), 3, "&from=" + day.plusDays(3)))
                        .text())
                .contains("so its days stay; only its place can change");
        Answer saved = save(cellar.coordinator().get(moveTo(places.get(1), 3, "")));

        assertThat(saved.status()).isEqualTo(303);
        assertThat(saved.location()).isNotEqualTo("/stays/" + stay.getId());
        assertThat(cellar.group()
                        .database()
                        .sql()
                        .fetch(STAY, STAY.SOWING_ID.eq(UUID.fromString(sowing)))
                        .sortAsc(STAY.FROM_DAY)
                        .map(row -> row.getFromDay() + " " + row.getToDay()))
                .containsExactly(stay.getFromDay() + " " + day, day + " " + stay.getToDay());
        assertThat(cellar.coordinator().get("/stays/" + stay.getId()).text())
                .contains("has ended and stays as it was", "Where it was carried to");
        assertThat(cellar.coordinator().get(moveTo(places.get(0), 1, "")).status())
                .as("what has ended is not moved")
                .isEqualTo(409);
    }

    @Test
    void a_freed_place_lets_the_request_wait_again_with_the_reason() {
        String path = "/stays/" + stay.getId() + "/release";
        assertThat(cellar.coordinator()
                        .post(path, Map.of("reason", "", "version", "1"))
                        .status())
                .isEqualTo(422);
        assertThat(cellar.coordinator()
                        .post(path, Map.of("reason", "no", "version", "7"))
                        .status())
                .isEqualTo(409);

        Answer freed = cellar.coordinator().post(path, Map.of("reason", "The mat is broken.", "version", "1"));

        assertThat(freed.status()).isEqualTo(303);
        assertThat(cellar.coordinator().get("/requests/" + sowing).text()).contains("waiting", "The mat is broken.");
        assertThat(cellar.member().get("/sowings/" + sowing).text()).contains("The mat is broken.");
        assertThat(cellar.coordinator().get("/stays/" + stay.getId()).text()).contains("Ilse ended this stay");
        assertThat(cellar.coordinator().get("/stays/" + stay.getId()).status()).isEqualTo(409);
    }

    private String moveTo(UUID place, int quarter, String more) {
        return "/stays/%s/move?spot=%s/%d%s".formatted(stay.getId(), place, quarter, more);
    }

    /** Presses the Save button of a comparison. */
    private String firstMat() {
        return Cellar.first(cellar.coordinator().get("/sites").body(), "/sites/mats/([0-9a-f-]{36})/change");
    }

    private Answer save(Answer shown) {
        return post(cellar.coordinator(), shown);
    }

    private static Answer post(Browser browser, Answer shown) {
        String action = Cellar.first(shown.body(), "method=\"post\" action=\"(/stays/[0-9a-f-]{36}/move)\"");
        return browser.post(action, saving(shown, action));
    }

    private static Map<String, String> saving(Answer shown, String action) {
        String body = shown.body();
        int form = body.indexOf("method=\"post\" action=\"" + action + "\"");
        return new HashMap<>(Cellar.hiddenFields(body.substring(form), action));
    }

    private Browser anotherCoordinator() {
        var database = cellar.group().database();
        UUID ines = new MemberStore(database, cellar.group().audit())
                .add(database.sql(), new NewMember("Ines Ortega", "US", "55803", "none"), true, "for a test");
        Browser browser = cellar.group().stranger();
        browser.setCookie("warmshelf", new SessionStore(database, cellar.group().clock()).open(ines));
        return browser;
    }

    private StayRecord stayOf(String sowing) {
        return cellar.group().database().sql().fetchSingle(STAY, STAY.SOWING_ID.eq(UUID.fromString(sowing)));
    }

    private void passUntil(LocalDate day) {
        LocalDate now = LocalDate.ofInstant(cellar.group().clock().instant(), java.time.ZoneOffset.UTC);
        while (now.isBefore(day)) {
            int days = (int) Math.min(7, day.toEpochDay() - now.toEpochDay());
            cellar.group().clock().advance(Duration.ofDays(days));
            now = now.plusDays(days);
            // Both look in meanwhile: whoever stays away for long is signed out.
            cellar.coordinator().get("/today");
            cellar.member().get("/today");
        }
    }
}
