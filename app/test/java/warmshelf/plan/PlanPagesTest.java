package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SEASON_PLAN;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.db.generated.Tables.STAY;

import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.StayStore;
import warmshelf.crop.CropCatalogue;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.TestGroup;

class PlanPagesTest {
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
    void a_plan_is_made_compared_published_told_and_undone() {
        String first = cellar.ask(Cellar.peppers());
        String second = cellar.ask(Cellar.peppers());

        String plan = planned();

        String page = cellar.coordinator().get(plan).text();
        assertThat(page).contains("2 of 2 requests have a place; no plan can place more.", "gets a place: mat M1");
        assertThat(stays()).isZero();

        Answer published = publish(plan);

        assertThat(published.status()).as(published.text()).isEqualTo(303);
        assertThat(state(first)).isEqualTo("placed");
        assertThat(state(second)).isEqualTo("placed");
        assertThat(cellar.member().get("/today").text()).contains("lies on mat M1 ");
        String mine = cellar.member().get("/sowings").body();
        String note = Cellar.first(mine, "/notes/([0-9a-f-]{36})/dismissal");
        cellar.coordinator().post("/notes/" + note + "/dismissal");
        assertThat(cellar.member().get("/sowings").body())
                .as("someone else's note stays")
                .contains(note);
        cellar.member().post("/notes/" + note + "/dismissal");
        assertThat(cellar.member().get("/sowings").body()).doesNotContain(note);

        Answer undone = cellar.coordinator().post(plan + "/undoing");

        assertThat(undone.status()).as(undone.text()).isEqualTo(303);
        assertThat(cellar.coordinator().get(plan).text()).contains("Undone: 2 wait for a place again.");
        assertThat(state(first)).isEqualTo("waiting");
        assertThat(cellar.coordinator().post(plan + "/undoing").status()).isEqualTo(409);
        assertThat(cellar.member().get("/today").text()).contains("waits for a place again");
        assertThat(cellar.member().get("/sowings").text())
                .as("nobody is offered what was just taken back")
                .doesNotContain("became free");
        assertThat(cellar.coordinator().get("/requests").text())
                .contains("2 places that came free when a plan was taken back are offered to nobody yet.");

        assertThat(cellar.member().post(plan + "/offers").status()).isEqualTo(403);
        cellar.coordinator().post(plan + "/offers");

        assertThat(cellar.coordinator().get(plan).text()).doesNotContain("Places held back");
        assertThat(cellar.member().get("/sowings").text()).contains("became free");
    }

    @Test
    void a_sowing_for_autumn_gets_a_place_in_its_own_days() {
        Map<String, String> kale = Cellar.peppers();
        kale.putAll(Map.of("crop", "kale", "variety", "Pier", "part", "autumn"));
        String autumn = cellar.ask(kale);
        String spring = cellar.ask(Cellar.peppers());

        publish(planned());

        assertThat(state(autumn)).isEqualTo("placed");
        assertThat(state(spring)).isEqualTo("placed");
        assertThat(firstDay(autumn)).isBetween(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 7, 31));
        assertThat(firstDay(spring)).isBefore(LocalDate.of(2027, 5, 1));
        String needs = cellar.member().get("/supplies").text();
        assertThat(needs).contains("2 sowings under way");
    }

    private LocalDate firstDay(String sowing) {
        return cellar.group()
                .database()
                .sql()
                .select(DSL.min(STAY.FROM_DAY))
                .from(STAY)
                .where(STAY.SOWING_ID.eq(UUID.fromString(sowing)))
                .fetchSingle()
                .value1();
    }

    @Test
    void what_has_begun_stays_when_a_publication_is_undone() {
        String sown = cellar.ask(Cellar.peppers());
        String other = cellar.ask(Cellar.peppers());
        String plan = planned();
        publish(plan);
        assertThat(cellar.tick(sown, Map.of("step", "sown")).status()).isEqualTo(303);

        cellar.coordinator().post(plan + "/undoing");

        assertThat(cellar.coordinator().get(plan).text())
                .contains("Undone: 1 waits for a place again. What has begun stays: Tom Okafor's");
        assertThat(state(sown)).isEqualTo("placed");
        assertThat(state(other)).isEqualTo("waiting");
    }

    @Test
    void a_counter_placement_meanwhile_stops_the_publication_with_sentences() {
        String planned = cellar.ask(Cellar.peppers());
        String plan = planned();
        // the same quarters on the same days, given to somebody who came to the counter
        String counter = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(counter);

        Answer answer = publish(plan);

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text())
                .contains("Nothing was published.")
                .contains("Tom Okafor's Pepper, sweet and mild hot · Lantern Row both lie on quarter");
        assertThat(state(planned)).isEqualTo("waiting");
        assertThat(stays()).isEqualTo(1);
    }

    @Test
    void a_plan_keeps_a_mat_at_the_whole_degree_fahrenheit_at_which_something_lies_there() {
        String lying = cellar.ask(Cellar.peppers());
        String offered = "/requests/" + lying + "/placement";
        Map<String, String> offer = Cellar.hiddenFields(
                cellar.coordinator().get("/requests/" + lying).body(), offered);
        offer.put("celsius", "81");
        assertThat(cellar.coordinator().post(offered, offer).status()).isEqualTo(303);
        String second = cellar.ask(Cellar.peppers());

        String plan = planned();

        String page = cellar.coordinator().get(plan).text();
        assertThat(page).contains("1 of 1 requests have a place", "81 °F").doesNotContain("80 °F");
        assertThat(publish(plan).status()).isEqualTo(303);
        assertThat(state(second)).isEqualTo("placed");
        assertThat(sql().selectDistinct(QUARTER_DAY.CELSIUS)
                        .from(QUARTER_DAY)
                        .where(QUARTER_DAY.KIND.eq("mat"))
                        .fetch(QUARTER_DAY.CELSIUS))
                .containsExactly(27.2);
    }

    @Test
    void a_set_point_typed_into_a_plan_is_read_and_published_as_typed() {
        String sowing = cellar.ask(Cellar.peppers());
        String plan = planned();
        Map<String, String> typed = typed(plan + "/requests/" + sowing);
        typed.put("celsius", "81");

        Answer changed = cellar.coordinator().post(plan + "/requests/" + sowing, typed);

        assertThat(changed.status()).as(changed.text()).isEqualTo(303);
        assertThat(cellar.coordinator().get(plan).text()).contains("81 °F");
        assertThat(typed(plan + "/requests/" + sowing)).containsEntry("celsius", "81");
        publish(plan);
        assertThat(cellar.member().get("/sowings/" + sowing).text()).contains("hot 81 °F");
    }

    @Test
    void a_change_by_hand_is_judged_before_it_is_kept() {
        String first = cellar.ask(Cellar.peppers());
        String second = cellar.ask(Cellar.peppers());
        String plan = planned();
        String editor = plan + "/requests/" + second;
        Map<String, String> there = typed(plan + "/requests/" + first);

        Map<String, String> same = new HashMap<>(there);
        Answer clash = cellar.coordinator().post(editor, same);

        assertThat(clash.status()).isEqualTo(422);
        assertThat(clash.text()).contains("both lie on quarter");
        assertThat(clash.typed("from")).isEqualTo(there.get("from"));

        same.put("place", "M1/2");
        same.put("quarter", "3");
        assertThat(cellar.coordinator().post(editor, same).status()).isEqualTo(303);
        assertThat(cellar.coordinator().get(plan).text()).contains("mat M1, place 2, right half");
    }

    @Test
    void the_second_coordinator_to_change_a_plan_sees_what_the_first_changed() {
        String first = cellar.ask(Cellar.peppers());
        String plan = planned();
        Map<String, String> removal = Map.of("version", "1");
        assertThat(cellar.coordinator()
                        .post(plan + "/requests/" + first + "/removal", removal)
                        .status())
                .isEqualTo(303);
        Map<String, String> late = new HashMap<>(typed(plan + "/requests/" + first));
        late.putAll(Map.of("version", "1", "place", "M1/2", "quarter", "1"));

        Answer answer = cellar.coordinator().post(plan + "/requests/" + first, late);

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text())
                .contains("Not kept: Tom Okafor's")
                .contains("Changed since you opened it: Ilse Brandt: Tom Okafor's")
                .contains("taken out");
        Answer published = cellar.coordinator().post(plan + "/publication", Map.of("version", "1"));
        assertThat(published.status()).isEqualTo(409);
        assertThat(stays()).isZero();
    }

    @Test
    void a_run_shows_its_progress_stops_when_asked_and_is_alone() {
        cellar.ask(Cellar.peppers());
        UUID running = claimed();
        String plan = "/plans/" + running;

        Answer page = cellar.coordinator().get(plan);

        assertThat(page.header("Refresh")).isEqualTo("3");
        assertThat(page.text()).contains("Best so far 0 of 1 requests have a place", "0 of 60 seconds");
        Answer another = cellar.coordinator().post("/plans", Map.of("seconds", "5", "startingNumber", "1"));
        assertThat(another.status()).isEqualTo(409);
        assertThat(another.text()).contains("A plan is being worked on already");
        assertThat(cellar.coordinator().post(plan + "/cancellation").status()).isEqualTo(303);
        assertThat(cellar.coordinator().get(plan).text()).contains("It is asked to stop.");
    }

    @Test
    void a_run_whose_server_was_restarted_is_lost_and_its_best_plan_can_be_published() {
        String sowing = cellar.ask(Cellar.peppers());
        String done = planned();
        UUID running = claimed();
        String best = sql().select(SEASON_PLAN.PLAN)
                .from(SEASON_PLAN)
                .where(SEASON_PLAN.ID.eq(UUID.fromString(done.substring("/plans/".length()))))
                .fetchSingle(SEASON_PLAN.PLAN);
        sql().update(SEASON_PLAN)
                .set(SEASON_PLAN.PLAN, best)
                .where(SEASON_PLAN.ID.eq(running))
                .execute();

        cellar.group().clock().advance(Duration.ofSeconds(61));

        String plan = "/plans/" + running;
        assertThat(cellar.coordinator().get(plan).text()).contains("The run fell silent before its time was over");
        assertThat(cellar.coordinator().post(plan + "/cancellation").status()).isEqualTo(409);
        Answer published = publish(plan);
        assertThat(published.status()).as(published.text()).isEqualTo(303);
        assertThat(state(sowing)).isEqualTo("placed");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "seconds | 0 | The seconds was '0'; a whole number from 5 to 300 is accepted.",
                "seconds | 9999 | The seconds was '9999'; a whole number from 5 to 300 is accepted.",
                "seconds | | The seconds is empty; a whole number from 5 to 300 is accepted.",
                "startingNumber | -1 | The starting number was '-1'; a whole number from 0 to 1,000,000 is accepted.",
                "free | nonsense | A stay that may move was named in a way that is not known"
            })
    void a_run_that_cannot_be_is_refused_with_its_sentence(String field, String typed, String sentence) {
        cellar.ask(Cellar.peppers());
        Map<String, String> fields = new HashMap<>(Map.of("seconds", "5", "startingNumber", "1"));
        fields.put(field, typed == null ? "" : typed);

        Answer answer = cellar.coordinator().post("/plans", fields);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(sql().fetchCount(SEASON_PLAN)).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "from | 2030-03-10 | The first day was 2030-03-10; a day from",
                "from | soon | The first day was 'soon'; a date such as 2027-03-01 is accepted.",
                "place | M1/9 | The place is not one of the group's mats; choose one from the list.",
                "place | nonsense | The place is not one of the group's mats; choose one from the list.",
                "quarter | 2 | The part of the place was '2'; accepted are: 1, 3.",
                "celsius | 60 | this crop's seed likes",
                "version | x | The plan's version was 'x'; a whole number"
            })
    void a_change_that_cannot_be_is_refused_with_its_sentence(String field, String typed, String sentence) {
        String sowing = cellar.ask(Cellar.peppers());
        String plan = planned();
        Map<String, String> fields = new HashMap<>(typed(plan + "/requests/" + sowing));
        fields.put(field, typed);

        Answer answer = cellar.coordinator().post(plan + "/requests/" + sowing, fields);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
    }

    @ParameterizedTest
    @ValueSource(strings = {"17", "nonsense", "1-1-1-1-1", "00000000-0000-0000-0000-000000000007"})
    void an_address_that_names_no_plan_is_not_found(String id) {
        for (String action : List.of("/cancellation", "/publication", "/undoing", "/requests/" + id)) {
            assertThat(cellar.coordinator().post("/plans/" + id + action).status())
                    .as(action)
                    .isEqualTo(404);
        }
        assertThat(cellar.coordinator().get("/plans/" + id).status()).isEqualTo(404);
    }

    @Test
    void with_nothing_waiting_there_is_nothing_to_plan() {
        assertThat(cellar.coordinator().get("/plans").text()).contains("there is nothing to plan");
        assertThat(cellar.coordinator().post("/plans", Map.of("seconds", "5")).status())
                .isEqualTo(409);
    }

    @Test
    void a_freed_stay_may_move_and_one_that_is_not_freed_may_not() {
        String placed = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(placed);
        cellar.ask(Cellar.peppers());
        String stay = sql().select(STAY.ID).from(STAY).fetchSingle(STAY.ID).toString();

        String kept = planned();
        assertThat(cellar.coordinator().get(kept).text()).doesNotContain("Published now:");

        String freeing = planned(Map.of("seconds", "5", "startingNumber", "1", "free", stay));
        assertThat(cellar.coordinator().get(freeing).text()).contains("Published now: Hall cellar");
        Answer published = publish(freeing);
        assertThat(published.status()).as(published.text()).isEqualTo(303);
        assertThat(state(placed)).isEqualTo("placed");
    }

    @Test
    void what_asked_for_light_is_planned_published_and_ticked_with_it() {
        String sowing = cellar.ask(withLight());
        String plan = planned(Map.of("seconds", "5", "startingNumber", "1", "withLight", "yes"));
        assertThat(cellar.coordinator().get(plan).text())
                .contains("; then under the light: Hall cellar · North rack · shelf 2, place 1, left half, ");

        assertThat(publish(plan).status()).isEqualTo(303);

        assertThat(stays()).isEqualTo(2);
        assertThat(cellar.tick(sowing, Map.of("step", "sown")).status()).isEqualTo(303);
        assertThat(cellar.member().get("/sowings/" + sowing + "/entry").body())
                .contains("to its booked place, Hall cellar · North rack · shelf 2 · light · place 1, left half");
    }

    @Test
    void with_no_place_left_under_the_lights_nothing_is_put_on_the_heat_to_have_nowhere_to_go() {
        cellar.ask(withLight());
        fillTheLitShelf(cellar.ask(Cellar.peppers()));

        String withLight = planned(Map.of("seconds", "5", "startingNumber", "1", "withLight", "yes"));
        String without = planned(Map.of("seconds", "5", "startingNumber", "1"));

        assertThat(cellar.coordinator().get(withLight).text())
                .contains(
                        "1 of 2 requests have a place",
                        "There is room on a mat, but no lit place for it when it comes off the heat.");
        assertThat(cellar.coordinator().get(without).text()).contains("2 of 2 requests have a place");
    }

    private void fillTheLitShelf(String sowing) {
        StayStore stays = new StayStore(cellar.group().audit(), new ClashStore(CropCatalogue.bundled()));
        sql().transaction(tx -> tx.dsl()
                .select(PLACE.ID)
                .from(PLACE)
                .where(PLACE.KIND.eq("lit"))
                .forEach(place -> stays.layUnderLight(
                        tx.dsl(),
                        UUID.fromString(sowing),
                        new PlaceAndDays(place.value1(), new Slot(1, 4), TestGroup.TODAY, TestGroup.TODAY.plusDays(90)),
                        cellar.group().coordinator().id())));
    }

    @Test
    void what_is_planned_where_it_lies_already_keeps_its_place_and_its_light() {
        cellar.ask(withLight());
        publish(planned(Map.of("seconds", "5", "startingNumber", "1", "withLight", "yes")));
        String stay = cellar.group()
                .database()
                .sql()
                .select(STAY.ID)
                .from(STAY)
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .where(PLACE.KIND.eq("mat"))
                .fetchSingle(STAY.ID)
                .toString();

        String again = planned(Map.of("seconds", "5", "startingNumber", "1", "withLight", "yes", "free", stay));

        assertThat(cellar.coordinator().get(again).text()).contains("keeps its place: mat M1");
        publish(again);
        assertThat(sql().fetchCount(STAY)).as("nothing was laid anew").isEqualTo(2);
    }

    @Test
    void a_change_by_hand_takes_its_light_along() {
        String sowing = cellar.ask(withLight());
        String plan = planned(Map.of("seconds", "5", "startingNumber", "1", "withLight", "yes"));
        Map<String, String> there = new HashMap<>(typed(plan + "/requests/" + sowing));
        there.put("place", "M1/2");
        there.put("quarter", "3");

        Answer changed = cellar.coordinator().post(plan + "/requests/" + sowing, there);

        assertThat(changed.status()).as(changed.text()).isEqualTo(303);
        assertThat(cellar.coordinator().get(plan).text())
                .contains("mat M1, place 2, right half", "then under the light");
    }

    @Test
    void what_overloads_a_circuit_already_is_told_before_a_run_begins() {
        cellar.placeAsSuggested(cellar.ask(Cellar.peppers()));
        cellar.ask(Cellar.peppers());
        sql().update(SITE).set(SITE.CIRCUIT_AMPS, java.math.BigDecimal.ONE).execute();

        Answer answer = cellar.coordinator().post("/plans", Map.of("seconds", "5", "startingNumber", "1"));

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text())
                .contains("What lies there already does not hold together, so nothing was planned.", "Hall cellar");
        assertThat(sql().fetchCount(SEASON_PLAN)).isZero();
    }

    private static Map<String, String> withLight() {
        Map<String, String> asked = new HashMap<>(Cellar.peppers());
        asked.put("after", "light");
        return asked;
    }

    private String planned() {
        return planned(Map.of("seconds", "5", "startingNumber", "1"));
    }

    /** Starts a run and waits until its page says that it is over. */
    private String planned(Map<String, String> fields) {
        Answer started = cellar.coordinator().post("/plans", fields);
        assertThat(started.status()).as(started.text()).isEqualTo(303);
        String plan = started.location();
        org.junit.jupiter.api.Assertions.assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            while (!cellar.coordinator().get(plan).header("Refresh").isEmpty()) {
                Thread.onSpinWait();
            }
        });
        return plan;
    }

    private Answer publish(String plan) {
        String body = cellar.coordinator().get(plan).body();
        Map<String, String> fields = body.contains("/publication\"")
                ? Cellar.hiddenFields(body, plan + "/publication")
                : Map.of("version", "1");
        return cellar.coordinator().post(plan + "/publication", fields);
    }

    /** What the form of a request in a plan holds. */
    private Map<String, String> typed(String editor) {
        Answer page = cellar.coordinator().get(editor);
        Map<String, String> fields = new HashMap<>();
        for (String name : List.of("version", "from", "celsius")) {
            fields.put(name, String.valueOf(page.typed(name)));
        }
        String body = page.body();
        fields.put(
                "place", body.contains("\" selected") || body.contains("\" checked") ? chosen(body, "place") : "M1/1");
        fields.put("quarter", chosen(body, "quarter"));
        return fields;
    }

    private static String chosen(String body, String name) {
        java.util.regex.Matcher radio = java.util.regex.Pattern.compile(
                        "name=\"" + name + "\" value=\"([^\"]+)\"[^>]* checked")
                .matcher(body);
        return radio.find() ? radio.group(1) : name.equals("place") ? "M1/1" : "1";
    }

    private UUID claimed() {
        UUID id = UUID.randomUUID();
        OffsetDateTime now = cellar.group().audit().now();
        sql().insertInto(SEASON_PLAN)
                .set(SEASON_PLAN.ID, id)
                .set(SEASON_PLAN.STATE, "running")
                .set(SEASON_PLAN.RUNNING, "season")
                .set(SEASON_PLAN.SEED, 1L)
                .set(SEASON_PLAN.SECONDS, 60)
                .set(SEASON_PLAN.WITH_LIGHT, false)
                .set(SEASON_PLAN.QUESTION_HASH, "none")
                .set(SEASON_PLAN.ASKED_BY, cellar.group().coordinator().id())
                .set(SEASON_PLAN.ASKED_AT, now)
                .set(SEASON_PLAN.BEAT_AT, now)
                .set(SEASON_PLAN.CANCEL_ASKED, false)
                .set(SEASON_PLAN.SPENT_SECONDS, 0)
                .set(SEASON_PLAN.REQUESTS, 1)
                .set(SEASON_PLAN.PLACED_AT_MOST, 1)
                .set(SEASON_PLAN.OPTIMAL, false)
                .set(SEASON_PLAN.PLAN, PlanJson.write(PlanJson.NOTHING))
                .set(SEASON_PLAN.VERSION, 1)
                .execute();
        return id;
    }

    private DSLContext sql() {
        return cellar.group().database().sql();
    }

    private int stays() {
        return sql().fetchCount(STAY, STAY.FROM_DAY.lt(STAY.TO_DAY));
    }

    private String state(String sowing) {
        return sql().select(SPACE_REQUEST.STATE)
                .from(SPACE_REQUEST)
                .where(SPACE_REQUEST.SOWING_ID.eq(UUID.fromString(sowing)))
                .fetchSingle(SPACE_REQUEST.STATE);
    }
}
