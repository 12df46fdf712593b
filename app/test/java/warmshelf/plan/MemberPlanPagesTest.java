package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

class MemberPlanPagesTest {
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
    void what_goes_out_under_cover_in_another_year_is_counted_in_the_season_it_was_asked_for() {
        Map<String, String> cover = Cellar.peppers();
        cover.put("where", "cover");
        cover.put("coverOn", "2028-01-10");

        cellar.ask(cover);

        assertThat(cellar.member().get("/plans/fairness").text())
                .containsPattern("Tom (?!Okafor)")
                .doesNotContain("Nobody has asked for a warm place");
        assertThat(cellar.member().get("/supplies").text()).contains("Seed compost");
    }

    @Test
    void room_that_is_given_up_is_offered_to_who_waits_and_taken_once() {
        String leaving = cellar.ask(Cellar.peppers());
        String waiting = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(leaving);
        assertThat(cellar.member().get("/sowings").text()).doesNotContain("Take this place");

        cellar.member().post("/sowings/" + leaving + "/withdrawal");

        assertThat(cellar.coordinator().get("/requests").text())
                .contains("Places that became free, and who waits for one");
        String mine = cellar.member().get("/sowings").body();
        String action = "/sowings/" + waiting + "/freed-place";
        Map<String, String> offer = Cellar.hiddenFields(mine, action);
        Map<String, String> elsewhere = new HashMap<>(offer);
        elsewhere.put("from", "2028-01-01");
        assertThat(cellar.member().post(action, elsewhere).status()).isEqualTo(409);
        assertThat(cellar.coordinator().post(action, offer).status())
                .as("a place is offered to its member only")
                .isEqualTo(409);

        Answer taken = cellar.member().post(action, offer);

        assertThat(taken.status()).as(taken.text()).isEqualTo(303);
        assertThat(state(waiting)).isEqualTo("placed");
        Map<String, String> anew = new HashMap<>(offer);
        anew.remove("submission");
        assertThat(cellar.member().post(action, anew).status()).isEqualTo(409);
        assertThat(cellar.member().get("/sowings").text()).doesNotContain("Take this place");
    }

    @Test
    void a_member_puts_a_waiting_request_of_their_own_first() {
        String first = cellar.ask(Cellar.peppers());
        // asked a moment later, as people do
        cellar.group().clock().advance(java.time.Duration.ofMinutes(5));
        String second = cellar.ask(Cellar.peppers());
        String put = "/sowings/" + second + "/first-choice";
        assertThat(cellar.member().get("/sowings").body()).contains(put);

        assertThat(cellar.coordinator().post(put).status()).isEqualTo(409);
        assertThat(cellar.member().post(put).status()).isEqualTo(303);

        assertThat(cellar.member().get("/sowings").body())
                .doesNotContain(put)
                .contains("/sowings/" + first + "/first-choice");
        assertThat(cellar.member().post("/sowings/nonsense/first-choice").status())
                .isEqualTo(404);
    }

    @Test
    void everyone_sees_how_the_mats_are_shared() {
        assertThat(cellar.member().get("/plans/fairness").text()).contains("Nobody has asked for a warm place");
        String placed = cellar.ask(Cellar.peppers());
        String refused = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(placed);
        cellar.coordinator().post("/requests/" + refused + "/refusal", Map.of("reason", "One tray each this year."));

        assertThat(cellar.member().get("/plans/fairness").text())
                .contains("Tom has a place 1 of 2")
                .contains("100 %")
                .contains("Tom, Lantern Row: refused. Told: “One tray each this year.”");
    }

    @Test
    void nothing_is_placed_on_a_mat_that_is_out_of_service() {
        String sowing = cellar.ask(Cellar.peppers());
        Map<String, String> fields = Cellar.hiddenFields(
                cellar.coordinator().get("/requests/" + sowing).body(), "/requests/" + sowing + "/placement");
        Answer out = cellar.coordinator().post("/plans/out-of-service", outOfService());
        assertThat(out.status()).as(out.text()).isEqualTo(303);

        Answer placed = cellar.coordinator().post("/requests/" + sowing + "/placement", fields);

        assertThat(placed.status()).isEqualTo(409);
        assertThat(placed.text()).contains("Mat M1 is out of service Mon 1 Mar to Mon 1 Nov: Broken cord.");
        assertThat(cellar.member().get("/plans/out-of-service").text()).contains("Broken cord");
        String id = Cellar.first(
                cellar.coordinator().get("/plans/out-of-service").body(), "/out-of-service/([0-9a-f-]{36})/end");
        assertThat(cellar.coordinator()
                        .post("/plans/out-of-service/" + id + "/end")
                        .status())
                .isEqualTo(303);
        assertThat(cellar.coordinator()
                        .post("/plans/out-of-service/" + id + "/end")
                        .status())
                .isEqualTo(404);
        assertThat(cellar.coordinator()
                        .post("/requests/" + sowing + "/placement", fields)
                        .status())
                .isEqualTo(303);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "first | 2027-02-28 | The first day was 2027-02-28; a day from 2027-03-01 to",
                "first | soon | The first day was 'soon'; a date such as 2027-03-01 is accepted.",
                "last | 2027-02-28 | The last day was 2027-02-28; a day from 2027-03-01 to",
                "last | 2031-01-01 | The last day was 2031-01-01; a day from 2027-03-01 to",
                "mat | nonsense | The mat is not one of the group's; choose one from the list.",
                "reason | | The reason is empty; please fill it in."
            })
    void days_out_of_service_that_cannot_be_are_refused_with_their_sentence(
            String field, String typed, String sentence) {
        Map<String, String> fields = outOfService();
        fields.put(field, typed == null ? "" : typed);

        Answer answer = cellar.coordinator().post("/plans/out-of-service", fields);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
    }

    private Map<String, String> outOfService() {
        String page = cellar.coordinator().get("/plans/out-of-service").body();
        Map<String, String> fields = new HashMap<>();
        fields.put("mat", Cellar.first(page, "name=\"mat\" value=\"([0-9a-f-]{36})\""));
        fields.put("first", "2027-03-01");
        fields.put("last", "2027-11-01");
        fields.put("reason", "Broken cord");
        return fields;
    }

    private String state(String sowing) {
        return cellar.group()
                .database()
                .sql()
                .select(SPACE_REQUEST.STATE)
                .from(SPACE_REQUEST)
                .where(SPACE_REQUEST.SOWING_ID.eq(UUID.fromString(sowing)))
                .fetchSingle(SPACE_REQUEST.STATE);
    }
}
