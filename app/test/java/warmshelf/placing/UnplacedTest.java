package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

/** What waits for a place, beside the racks. */
class UnplacedTest {
    private Cellar cellar;
    private String waiting;

    @BeforeEach
    void askForSpace() {
        cellar = Cellar.open();
        waiting = cellar.ask(Cellar.peppers());
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void coordinators_find_it_beside_the_racks_and_members_do_not() {
        assertThat(cellar.coordinator().get("/racks").body())
                .contains("Waits for a place: 1", "href=\"/requests/" + waiting + "\" data-slot=\"1/");
        assertThat(cellar.member().get("/racks").body()).doesNotContain("Waits for a place", "/requests/");
    }

    @Test
    void one_press_places_it_comes_back_to_the_racks_and_one_takes_it_back() {
        String action = "/requests/" + waiting + "/placement";
        Answer answer = cellar.coordinator()
                .post(
                        action,
                        Cellar.hiddenFields(cellar.coordinator().get("/racks").body(), action));

        assertThat(answer.location()).startsWith("/racks?day=");
        assertThat(state()).isEqualTo("placed");

        String undo = "/requests/" + waiting + "/return?back=%2Fracks%3Fday%3D2027-03-01";
        assertThat(cellar.coordinator().get(answer.location()).body()).contains("action=\"" + undo);
        assertThat(cellar.coordinator().post(undo).location()).isEqualTo("/racks?day=2027-03-01");
        assertThat(state()).isEqualTo("waiting");
    }

    @Test
    void the_script_is_told_what_would_come_of_it_as_the_saving_judges() {
        Answer fits = look(waiting, matPlace(), "1");
        assertThat(fits.status()).isEqualTo(200);
        assertThat(fits.body())
                .contains("\"fits\":true", "\"from\":\"20", matPlace().toString());

        cellar.placeAsSuggested(waiting);
        String second = cellar.ask(Cellar.peppers());
        UUID taken = taken(waiting);

        Answer clash = look(second, taken, "1");
        assertThat(clash.body()).contains("\"fits\":false");
        Map<String, String> fields = new HashMap<>(Map.of("place", taken.toString(), "quarter", "1"));
        fields.put("from", clash.body().replaceAll(".*\"from\":\"([0-9-]+)\".*", "$1"));
        assertThat(cellar.coordinator()
                        .post("/requests/" + second + "/placement", fields)
                        .status())
                .isEqualTo(409);
    }

    @Test
    void a_place_or_day_that_cannot_be_and_a_request_decided_meanwhile_are_refused_with_a_sentence() {
        assertThat(look(waiting, new UUID(7, 7), "1").status()).isEqualTo(422);
        assertThat(cellar.coordinator()
                        .get("/requests/" + waiting + "/move?spot=nonsense")
                        .status())
                .isEqualTo(422);
        assertThat(cellar.coordinator()
                        .get("/requests/" + waiting + "/move?day=soon")
                        .status())
                .isEqualTo(422);
        assertThat(look(new UUID(7, 7).toString(), matPlace(), "1").status()).isEqualTo(404);

        cellar.placeAsSuggested(waiting);

        Answer late = look(waiting, matPlace(), "1");
        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("Somebody else decided on this request a moment ago");
    }

    private Answer look(String request, UUID place, String quarter) {
        return cellar.coordinator()
                .get("/requests/" + request + "/move?spot=" + place + "/" + quarter + "&day=2027-03-01");
    }

    private UUID matPlace() {
        return cellar.group()
                .database()
                .sql()
                .select(PLACE.ID)
                .from(PLACE)
                .where(PLACE.MAT_ID.isNotNull())
                .orderBy(PLACE.NUMBER)
                .limit(1)
                .fetchSingle(PLACE.ID);
    }

    private UUID taken(String sowing) {
        return cellar.group()
                .database()
                .sql()
                .fetchOne(
                        "select p.id from stay s join place p on p.id = s.place_id where p.mat_id is not null and s.sowing_id = ?",
                        UUID.fromString(sowing))
                .get(0, UUID.class);
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
