package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.SEASON_PLAN;
import static warmshelf.db.generated.Tables.SITE;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

class PlanRunPagesTest extends PlanOnPages {
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
}
