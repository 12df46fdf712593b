package warmshelf.surplus;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

/** Fourteen peppers of which ten were wanted: offered, seen, taken and handed over through the pages. */
class SurplusPagesTest {
    private Cellar cellar;
    private Browser neighbour;
    private String peppers;

    @BeforeEach
    void raise_fourteen() {
        cellar = Cellar.open();
        neighbour = cellar.group().signedIn(cellar.group().onDuty());
        peppers = cellar.ask(Cellar.peppers());
        assertThat(cellar.placeAsSuggested(peppers).status()).isEqualTo(303);
        tick(Map.of("step", "sown"));
        cellar.group().clock().advance(Duration.ofDays(14));
        tick(Map.of("step", "look", "sprouted", "14"));
        tick(Map.of(
                "step", "under-light", "lightPlace", cellar.lightPlaces(peppers).get(0)));
    }

    private void tick(Map<String, String> fields) {
        Answer answer = cellar.tick(peppers, fields);
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void what_is_over_is_offered_by_one_press_on_today_and_taken_by_one() {
        assertThat(cellar.member().get("/today").text()).contains("4 of 14 to give away?");
        String today = cellar.member().get("/today").body();
        Map<String, String> offer = Cellar.hiddenFields(today, "/sowings/" + peppers + "/surplus");
        assertThat(offer).containsEntry("plants", "4");
        assertThat(cellar.member()
                        .post("/sowings/" + peppers + "/surplus", offer)
                        .status())
                .isEqualTo(303);
        assertThat(neighbour.get("/today").text()).contains("gives seedlings away: Pepper");

        Answer taken = neighbour.post("/sowings/" + peppers + "/surplus/takings", Map.of("plants", "3"));

        assertThat(taken.status()).as(taken.text()).isEqualTo(303);
        assertThat(neighbour.get("/today").text()).contains("are yours to fetch", "I have them");
        assertThat(cellar.member().get("/today").text()).contains("takes 3 of your Pepper", "Handed over");
        assertThat(neighbour.get("/surplus").text()).contains("To be handed over");
    }

    @Test
    void either_side_confirms_and_that_counts_in_the_findings() {
        offerAndTake();
        String handingOver =
                Cellar.first(neighbour.get("/surplus").body(), "action=\"(/surplus/takings/[^\"]+/handing-over)\"");

        assertThat(neighbour.post(handingOver, Map.of()).status()).isEqualTo(303);

        assertThat(cellar.member().get("/today").text()).doesNotContain("takes 3 of your");
        assertThat(cellar.member().get("/findings").text()).contains("3 seedlings were given to other members.");
        assertThat(cellar.member().get("/findings/2027/sowings.csv").body()).contains("given_away");
        assertThat(neighbour.get("/harvest").text()).contains("Lantern Row");
        assertThat(cellar.member().post(handingOver, Map.of()).status()).isEqualTo(409);
        assertThat(cellar.member().post(handingOver + "/undoing", Map.of()).status())
                .isEqualTo(303);
        assertThat(cellar.member().get("/findings").text()).doesNotContain("given to other members");
    }

    @Test
    void a_grower_who_pots_them_on_offers_what_is_left_over_in_the_same_press() {
        tick(Map.of("step", "first-feed"));
        cellar.group().clock().advance(Duration.ofDays(28));
        assertThat(cellar.member().get("/today").body()).contains("name=\"giveAway\"");
        neighbour = cellar.group().signedIn(cellar.group().onDuty());
        assertThat(neighbour.get("/today?show=all").body())
                .as("only the grower is asked")
                .doesNotContain("name=\"giveAway\"");

        Answer potted = cellar.tick(peppers, Map.of("step", "potted-on", "giveAway", "4"));

        assertThat(potted.status()).as(potted.text()).isEqualTo(303);
        assertThat(neighbour.get("/surplus").text()).contains("Lantern Row 4 of Tom potted on");
        assertThat(cellar.member().get("/today").text()).doesNotContain("to give away?");
    }

    @Test
    void what_was_done_is_kept_though_more_are_offered_than_there_are_or_by_somebody_else() {
        Answer tooMany = cellar.tick(peppers, Map.of("step", "first-feed", "giveAway", "15"));
        Answer others =
                neighbour.post("/sowings/" + peppers + "/entries", Map.of("step", "potted-on", "giveAway", "2"));

        assertThat(tooMany.status()).as(tooMany.text()).isEqualTo(303);
        assertThat(others.status()).as(others.text()).isEqualTo(303);
        assertThat(cellar.member().get("/sowings/" + peppers).text()).contains("fed at half strength", "potted on");
        assertThat(neighbour.get("/surplus").text()).contains("Nobody gives any away just now");
    }

    @Test
    void more_to_give_away_than_were_sown_is_asked_again() {
        Answer answer = cellar.tick(peppers, Map.of("step", "potted-on", "giveAway", "1000"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("To give away");
    }

    private void offerAndTake() {
        assertThat(cellar.member()
                        .post("/sowings/" + peppers + "/surplus", Map.of("plants", "4"))
                        .status())
                .isEqualTo(303);
        assertThat(neighbour
                        .post("/sowings/" + peppers + "/surplus/takings", Map.of("plants", "3"))
                        .status())
                .isEqualTo(303);
    }

    @Test
    void what_is_not_wanted_after_all_is_free_again_and_the_other_side_is_told() {
        offerAndTake();
        String back = Cellar.first(neighbour.get("/surplus").body(), "action=\"(/surplus/takings/[^\"]+/return)\"");

        assertThat(neighbour.post(back, Map.of()).status()).isEqualTo(303);

        assertThat(cellar.member().get("/today").text()).contains("does not take the 3 of your Pepper");
        assertThat(cellar.member().get("/surplus").text()).contains("4 in all, 0 taken, 4 free");
        assertThat(cellar.member()
                        .post("/sowings/" + peppers + "/surplus/ending", Map.of())
                        .status())
                .isEqualTo(303);
        assertThat(neighbour.get("/surplus").text()).contains("Nobody gives any away just now");
    }

    @Test
    void who_left_by_mistake_gets_the_seedlings_again_that_nobody_else_took_meanwhile() {
        offerAndTake();
        String page = "/people/" + cellar.group().onDuty().id() + "/leaving";
        assertThat(cellar.coordinator().post(page).status()).isEqualTo(303);
        assertThat(cellar.member().get("/surplus").text()).contains("4 in all, 0 taken, 4 free");

        assertThat(cellar.coordinator().post(page + "/undo").status()).isEqualTo(303);

        assertThat(cellar.member().get("/surplus").text()).contains("4 in all, 3 taken, 1 free");
        cellar.group().clock().advance(Duration.ofMinutes(1));
        assertThat(cellar.coordinator().post(page).status()).isEqualTo(303);
        cellar.coordinator().post("/sowings/" + peppers + "/surplus/takings", Map.of("plants", "2"));
        assertThat(cellar.coordinator().post(page + "/undo").status()).isEqualTo(303);
        assertThat(cellar.member().get("/surplus").text()).contains("4 in all, 2 taken, 2 free");
        assertThat(cellar.coordinator().get("/people").text()).contains("Others have changed 1 since");
    }

    @Test
    void more_than_there_are_and_what_is_no_number_come_back_with_a_sentence() {
        Answer many = cellar.member().post("/sowings/" + peppers + "/surplus", Map.of("plants", "15"));
        assertThat(many.status()).isEqualTo(422);
        assertThat(many.text()).contains("there are 14 at most");
        assertThat(many.typed("plants")).isEqualTo("15");
        offerAndTake();

        Answer late = neighbour.post("/sowings/" + peppers + "/surplus/takings", Map.of("plants", "2"));
        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("1 are still free");
        assertThat(neighbour
                        .post("/sowings/" + peppers + "/surplus/takings", Map.of("plants", "some"))
                        .status())
                .isEqualTo(422);
    }

    @Test
    void only_the_grower_or_a_coordinator_offers_and_only_the_two_confirm() {
        assertThat(neighbour.get("/sowings/" + peppers + "/surplus").status()).isEqualTo(403);
        assertThat(neighbour
                        .post("/sowings/" + peppers + "/surplus", Map.of("plants", "1"))
                        .status())
                .isEqualTo(403);
        assertThat(cellar.coordinator().get("/sowings/" + peppers + "/surplus").status())
                .isEqualTo(200);
        assertThat(cellar.member()
                        .post("/surplus/takings/00000000-0000-0001-0000-000000000002/handing-over", Map.of())
                        .status())
                .isEqualTo(404);
    }
}
