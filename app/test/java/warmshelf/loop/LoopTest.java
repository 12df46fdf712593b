package warmshelf.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;

import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Answer;
import warmshelf.testing.TestGroup;

/** The whole loop through the pages, without a line of script: ask, place, look, move on. */
class LoopTest {
    private Cellar cellar;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void the_plan_shows_seeds_dates_with_reasons_the_soak_with_its_caution_and_free_places() {
        Map<String, String> asked = Cellar.peppers();
        StringBuilder query = new StringBuilder("/ask/plan?");
        asked.forEach((name, value) ->
                query.append(name).append('=').append(value.replace(" ", "+")).append('&'));

        Answer plan = cellar.member().get(query.toString());

        assertThat(plan.status()).isEqualTo(200);
        assertThat(plan.text())
                .contains("Seeds to sow", "Soak the seed", "Hydrogen peroxide", "Off the heat", "Plant out", "M1")
                .contains("Send the request");
    }

    @Test
    void cells_go_from_request_to_planting_out_and_give_every_place_back() {
        String sowing = cellar.ask(Cellar.peppers());
        assertThat(cellar.member().get("/sowings/" + sowing).text()).contains("waiting");

        assertThat(cellar.placeAsSuggested(sowing).status()).isEqualTo(303);
        assertThat(cellar.member().get("/sowings/" + sowing).text()).contains("placed", "mat M1");
        LocalDate start = firstDay(sowing);
        cellar.group().clock().advance(Duration.ofDays(start.toEpochDay() - TestGroup.TODAY.toEpochDay()));

        assertThat(cellar.member().get("/today").text()).contains("Sow it", "Lantern Row", "Write the label first");
        assertThat(cellar.tick(sowing, Map.of("step", "sown")).status()).isEqualTo(303);
        cellar.group().clock().advance(Duration.ofDays(9));
        assertThat(cellar.member().get("/today").text()).contains("Look at the cells", "day 9");
        assertThat(cellar.tick(sowing, Map.of("step", "look", "nothing", "0")).status())
                .isEqualTo(303);
        assertThat(cellar.member().get("/today").text()).contains("Looked at today");
        cellar.group().clock().advance(Duration.ofDays(1));
        assertThat(cellar.tick(sowing, Map.of("step", "look", "sprouted", "9")).status())
                .isEqualTo(303);
        assertThat(cellar.member().get("/today").text()).contains("Taken home", "Under a light that is free");

        Answer moved = cellar.tick(
                sowing,
                Map.of(
                        "step",
                        "under-light",
                        "lightPlace",
                        cellar.lightPlaces(sowing).get(0)));
        assertThat(moved.status()).isEqualTo(303);
        LocalDate today = start.plusDays(10);
        assertThat(taken("mat", today)).isZero();
        assertThat(taken("lit", today)).isEqualTo(2);

        cellar.group().clock().advance(Duration.ofDays(16));
        assertThat(cellar.member().get("/today").text()).contains("First feed");
        for (String step : new String[] {"first-feed", "potted-on", "hardening-off", "planted-out"}) {
            cellar.group().clock().advance(Duration.ofDays(9));
            assertThat(cellar.tick(sowing, Map.of("step", step)).status())
                    .as(step)
                    .isEqualTo(303);
        }
        assertThat(taken("lit", today.plusDays(60))).isZero();
        assertThat(cellar.member().get("/sowings").text()).contains("Finished: 1", "planted out");
    }

    @Test
    void a_bag_is_looked_into_from_about_day_seven_and_seed_moves_as_its_root_shows() {
        Map<String, String> asked = Cellar.peppers();
        asked.put("method", "bag");
        String sowing = cellar.ask(asked);
        cellar.placeAsSuggested(sowing);
        LocalDate start = firstDay(sowing);
        cellar.group().clock().advance(Duration.ofDays(start.toEpochDay() - TestGroup.TODAY.toEpochDay()));
        cellar.tick(sowing, Map.of("step", "sown"));
        cellar.group().clock().advance(Duration.ofDays(2));
        assertThat(cellar.member().get("/today").text()).doesNotContain("Look into the bag");
        cellar.group().clock().advance(Duration.ofDays(5));
        assertThat(cellar.member().get("/today").text()).contains("Look into the bag", "day 7");

        cellar.tick(sowing, Map.of("step", "look", "sprouted", "5"));
        assertThat(cellar.member().get("/today").text()).contains("Move sprouted seed to cells");
        cellar.tick(sowing, Map.of("step", "moved-to-cells", "moved", "5"));
        assertThat(cellar.member().get("/sowings/" + sowing).text()).contains("sprouting");
        cellar.tick(
                sowing,
                Map.of(
                        "step",
                        "moved-to-cells",
                        "moved",
                        "5",
                        "finished",
                        "yes",
                        "lightPlace",
                        cellar.lightPlaces(sowing).get(0)));

        assertThat(cellar.member().get("/sowings/" + sowing).text()).contains("in cells");
        assertThat(taken("mat", start.plusDays(7))).isZero();
        assertThat(taken("lit", start.plusDays(7))).isEqualTo(2);
    }

    @Test
    void dates_follow_what_was_seen() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        LocalDate start = firstDay(sowing);
        cellar.group().clock().advance(Duration.ofDays(start.toEpochDay() - TestGroup.TODAY.toEpochDay()));
        cellar.tick(sowing, Map.of("step", "sown"));
        String before = cellar.member().get("/sowings/" + sowing).text();
        cellar.group().clock().advance(Duration.ofDays(5));
        cellar.tick(sowing, Map.of("step", "look", "sprouted", "9"));

        String after = cellar.member().get("/sowings/" + sowing).text();

        assertThat(feedLine(after)).isNotEqualTo(feedLine(before));
    }

    private static String feedLine(String text) {
        int at = text.indexOf("First feed");
        return text.substring(Math.max(0, at - 60), at);
    }

    @Test
    void a_second_tray_is_refused_the_same_place_with_the_name_of_who_has_it() {
        String first = cellar.ask(Cellar.peppers());
        String second = cellar.ask(Cellar.peppers());
        Map<String, String> samePlace = Cellar.hiddenFields(
                cellar.coordinator().get("/requests/" + first).body(), "/requests/" + first + "/placement");
        assertThat(cellar.coordinator()
                        .post("/requests/" + first + "/placement", samePlace)
                        .status())
                .isEqualTo(303);

        Answer clash = cellar.coordinator().post("/requests/" + second + "/placement", samePlace);

        assertThat(clash.status()).isEqualTo(409);
        assertThat(clash.text()).contains("is taken by", "Lantern Row");
        assertThat(state(second)).isEqualTo("waiting");
    }

    @Test
    void a_mat_that_cannot_hold_the_crops_band_is_refused_with_both_ranges() {
        String sowing = cellar.ask(Cellar.peppers());
        String cool = Cellar.first(
                cellar.coordinator().get("/requests/" + sowing).body(),
                "value=\"([0-9a-f-]{36})\"[^>]*>(?:<span>)?M2, place 1");
        Map<String, String> fields = new HashMap<>(Cellar.hiddenFields(
                cellar.coordinator().get("/requests/" + sowing).body(), "/requests/" + sowing + "/placement"));
        fields.put("place", cool);

        Answer refused = cellar.coordinator().post("/requests/" + sowing + "/placement", fields);

        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.text()).contains("Mat M2 can hold 64–72 °F");
    }

    @Test
    void a_refusal_needs_a_reason_and_shows_it_to_the_member() {
        String sowing = cellar.ask(Cellar.peppers());

        assertThat(cellar.coordinator()
                        .post("/requests/" + sowing + "/refusal", Map.of("reason", ""))
                        .status())
                .isEqualTo(422);
        assertThat(cellar.coordinator()
                        .post("/requests/" + sowing + "/refusal", Map.of("reason", "The mats are off that week."))
                        .status())
                .isEqualTo(303);

        assertThat(cellar.member().get("/sowings/" + sowing).text()).contains("refused", "The mats are off that week.");
        assertThat(cellar.coordinator().post("/requests/" + sowing + "/return").status())
                .isEqualTo(303);
        assertThat(state(sowing)).isEqualTo("waiting");
    }

    @Test
    void withdrawing_frees_the_place_and_nobody_else_may_do_it() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        LocalDate start = firstDay(sowing);
        var neighbour = cellar.group().signedIn(cellar.group().onDuty());

        assertThat(neighbour.post("/sowings/" + sowing + "/withdrawal").status())
                .isEqualTo(403);
        assertThat(cellar.member().post("/sowings/" + sowing + "/withdrawal").status())
                .isEqualTo(303);
        assertThat(taken("mat", start)).isZero();
        assertThat(cellar.member().post("/sowings/" + sowing + "/withdrawal").status())
                .isEqualTo(409);
    }

    @Test
    void everything_waiting_is_placed_as_suggested_in_one_press() {
        for (int request = 0; request < 5; request++) {
            cellar.ask(Cellar.peppers());
        }

        assertThat(cellar.coordinator().post("/requests/placements").status()).isEqualTo(303);

        long placed = cellar.group().database().sql().fetchCount(SPACE_REQUEST, SPACE_REQUEST.STATE.eq("placed"));
        assertThat(placed)
                .as("one warm mat with two places holds four half trays at a time")
                .isBetween(4L, 5L);
    }

    private LocalDate firstDay(String sowing) {
        return cellar.group()
                .database()
                .sql()
                .select(org.jooq.impl.DSL.min(QUARTER_DAY.ON_DAY))
                .from(QUARTER_DAY)
                .join(warmshelf.db.generated.Tables.STAY)
                .on(warmshelf.db.generated.Tables.STAY.ID.eq(QUARTER_DAY.STAY_ID))
                .where(warmshelf.db.generated.Tables.STAY.SOWING_ID.eq(UUID.fromString(sowing)))
                .fetchSingle()
                .value1();
    }

    private int taken(String kind, LocalDate day) {
        return cellar.group()
                .database()
                .sql()
                .fetchCount(QUARTER_DAY, QUARTER_DAY.KIND.eq(kind).and(QUARTER_DAY.ON_DAY.eq(day)));
    }

    private String state(String sowing) {
        return cellar.group()
                .database()
                .sql()
                .select(SPACE_REQUEST.STATE)
                .from(SPACE_REQUEST)
                .where(SPACE_REQUEST.SOWING_ID.eq(UUID.fromString(sowing)))
                .fetchSingle()
                .value1();
    }
}
