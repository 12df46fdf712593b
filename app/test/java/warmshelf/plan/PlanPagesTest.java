package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

class PlanPagesTest extends PlanOnPages {
    @Test
    void a_plan_is_made_compared_published_told_and_undone() {
        String first = cellar.ask(Cellar.peppers());
        String second = cellar.ask(Cellar.peppers());

        String plan = planned();

        String page = cellar.coordinator().get(plan).text();
        assertThat(page)
                .contains("2 of 2 requests have a place; no plan can place more.", "gets a place mat M1, place 1");
        assertThat(stays()).isZero();

        Answer published = publish(plan);

        assertThat(published.status()).as(published.text()).isEqualTo(303);
        assertThat(state(first)).isEqualTo("placed");
        assertThat(state(second)).isEqualTo("placed");
        assertThat(cellar.member().get("/today").text()).contains("New All seen Placed: Pepper");
        assertThat(cellar.member().get("/sowings").text()).contains("lies on mat M1 ");
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
        assertThat(cellar.member().get("/today").text()).contains("Waits for a place again: Pepper");
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

    @Test
    void what_has_begun_stays_when_a_publication_is_undone() {
        String sown = cellar.ask(Cellar.peppers());
        String other = cellar.ask(Cellar.peppers());
        String plan = planned();
        publish(plan);
        assertThat(cellar.tick(sown, Map.of("step", "sown")).status()).isEqualTo(303);

        cellar.coordinator().post(plan + "/undoing");

        assertThat(cellar.coordinator().get(plan).text())
                .contains("Undone: 1 waits for a place again. What has begun stays: Tom's");
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
                .contains("Tom's Pepper, sweet and mild hot · Lantern Row both lie on quarter");
        assertThat(state(planned)).isEqualTo("waiting");
        assertThat(stays()).isEqualTo(1);
    }

    @Test
    void a_freed_stay_may_move_and_one_that_is_not_freed_may_not() {
        String placed = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(placed);
        cellar.ask(Cellar.peppers());
        String stay = sql().select(STAY.ID).from(STAY).fetchSingle(STAY.ID).toString();

        String kept = planned();
        assertThat(cellar.coordinator().get(kept).text()).doesNotContain("published now:");

        String freeing = planned(Map.of("seconds", "5", "startingNumber", "1", "free", stay));
        assertThat(cellar.coordinator().get(freeing).text()).contains("published now: Hall cellar");
        Answer published = publish(freeing);
        assertThat(published.status()).as(published.text()).isEqualTo(303);
        assertThat(state(placed)).isEqualTo("placed");
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
}
