package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.db.generated.Tables.STAY;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RequestPagesTest {
    private Cellar cellar;
    private String waiting;

    @BeforeAll
    void askForSpace() {
        cellar = Cellar.open();
        waiting = cellar.ask(Cellar.peppers());
    }

    @AfterAll
    void close() {
        cellar.close();
    }

    @Test
    void coordinators_decide_and_members_do_not() {
        assertThat(cellar.coordinator().get("/requests").text()).contains("Lantern Row");
        assertThat(cellar.member().get("/requests").status()).isEqualTo(403);
        assertThat(cellar.member().get("/requests/" + waiting).status()).isEqualTo(403);
        for (String action : new String[] {"/placement", "/refusal", "/return"}) {
            assertThat(cellar.member().post("/requests/" + waiting + action).status())
                    .as(action)
                    .isEqualTo(403);
        }
        assertThat(cellar.member().post("/requests/placements").status()).isEqualTo(403);
        assertThat(state()).isEqualTo("waiting");
    }

    @Test
    void strangers_are_shown_the_door() {
        assertThat(cellar.group().stranger().get("/requests").location()).startsWith("/sign-in");
        assertThat(cellar.group()
                        .stranger()
                        .postAsIs("/requests/" + waiting + "/refusal", Map.of("reason", "no"))
                        .status())
                .isEqualTo(401);
    }

    @ParameterizedTest
    @ValueSource(strings = {"17", "nonsense", "1-1-1-1-1", "00000000-0000-0000-0000-000000000007"})
    void an_address_that_names_no_request_is_not_found(String id) {
        assertThat(cellar.coordinator().get("/requests/" + id).status()).isEqualTo(404);
        assertThat(cellar.coordinator()
                        .post("/requests/" + id + "/refusal", Map.of("reason", "no"))
                        .status())
                .isEqualTo(404);
        assertThat(cellar.coordinator()
                        .post("/requests/" + id + "/placement", placement())
                        .status())
                .isEqualTo(404);
    }

    @Test
    void a_form_with_someone_elses_token_is_refused() {
        Map<String, String> fields = new HashMap<>(Map.of("reason", "no", "csrf", "made-up"));

        assertThat(cellar.coordinator()
                        .postAsIs("/requests/" + waiting + "/refusal", fields)
                        .status())
                .isEqualTo(403);
        assertThat(state()).isEqualTo("waiting");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "from | 2027-02-28 | The first day was 2027-02-28, which has passed; today is 2027-03-01.",
                "from | 2207-03-10 | The first day was '2207-03-10'; a date such as 2027-03-01 is accepted.",
                "from | 2030-03-10 | The first day was 2030-03-10; a day from 2027-03-01 to 2028-03-01 is accepted.",
                "from | soon | The first day was 'soon'; a date such as 2027-03-01 is accepted.",
                "celsius | hot | The set-point in °F was 'hot'; a whole number from 50 to 104 is accepted.",
                "celsius | 200 | The set-point in °F was '200'; a whole number from 50 to 104 is accepted.",
                "celsius | 60 | this crop's seed likes",
                "quarter | 2 | The part of the place was '2'; accepted are: 1, 3.",
                "place | 00000000-0000-0000-0000-000000000007 | The place is not one of the group's mats; choose one from the list."
            })
    void a_placement_that_cannot_be_is_refused_with_its_sentence(String field, String typed, String sentence) {
        Map<String, String> fields = placement();
        fields.put(field, typed);

        Answer answer = cellar.coordinator().post("/requests/" + waiting + "/placement", fields);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(cellar.group().database().sql().fetchCount(STAY, STAY.SOWING_ID.eq(UUID.fromString(waiting))))
                .isZero();
    }

    @Test
    void what_was_decided_cannot_be_decided_again() {
        String decided = cellar.ask(Cellar.peppers());
        cellar.coordinator().post("/requests/" + decided + "/refusal", Map.of("reason", "The mats are off."));

        Answer again = cellar.coordinator().post("/requests/" + decided + "/refusal", Map.of("reason", "Once more."));

        assertThat(again.status()).isEqualTo(409);
        assertThat(again.text()).contains("This request is not waiting any more");
        assertThat(cellar.member().get("/sowings/" + decided).text())
                .contains("The mats are off.")
                .doesNotContain("Once more.");
    }

    @Test
    void a_decision_on_seed_that_is_sown_cannot_be_taken_back() {
        String sown = cellar.ask(Cellar.peppers());
        assertThat(cellar.placeAsSuggested(sown).status()).isEqualTo(303);
        assertThat(cellar.tick(sown, Map.of("step", "sown")).status()).isEqualTo(303);

        Answer answer = cellar.coordinator().post("/requests/" + sown + "/return");

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text()).contains("Only a decision on seed that is not sown yet can be taken back.");
    }

    @Test
    void at_the_counter_the_light_after_the_heat_is_booked_as_well_and_a_decision_taken_back_frees_it() {
        Map<String, String> asked = new HashMap<>(Cellar.peppers());
        asked.put("after", "light");
        String sowing = cellar.ask(asked);

        cellar.placeAsSuggested(sowing);

        assertThat(cellar.coordinator().get("/requests").text())
                .contains("its place is under the light: Hall cellar · North rack · shelf 2 · place 1, left half.");
        assertThat(lastingStays(sowing)).isEqualTo(2);
        cellar.coordinator().post("/requests/" + sowing + "/return");
        assertThat(lastingStays(sowing)).isZero();
    }

    @Test
    void where_it_goes_after_the_heat_is_one_of_two() {
        Map<String, String> asked = new HashMap<>(Cellar.peppers());
        asked.put("after", "the attic");

        Answer answer = cellar.member().post("/sowings", asked);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("After the heat was 'the attic'; accepted are: light, home.");
    }

    private int lastingStays(String sowing) {
        return cellar.group()
                .database()
                .sql()
                .fetchCount(STAY, STAY.SOWING_ID.eq(UUID.fromString(sowing)), STAY.FROM_DAY.lt(STAY.TO_DAY));
    }

    private Map<String, String> placement() {
        String action = "/requests/" + waiting + "/placement";
        return Cellar.hiddenFields(
                cellar.coordinator().get("/requests/" + waiting).body(), action);
    }

    private String state() {
        return cellar.group()
                .database()
                .sql()
                .select(SPACE_REQUEST.STATE)
                .from(SPACE_REQUEST)
                .where(SPACE_REQUEST.SOWING_ID.eq(UUID.fromString(waiting)))
                .fetchSingle(SPACE_REQUEST.STATE);
    }
}
