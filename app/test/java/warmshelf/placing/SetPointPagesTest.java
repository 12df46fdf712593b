package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

/** A mat's page: reading it, and turning it without harm to what lies there. */
class SetPointPagesTest {
    private Cellar cellar;
    private String address;

    @BeforeEach
    void lay_peppers_on_the_warm_mat() {
        cellar = Cellar.open();
        String sowing = cellar.ask(Cellar.peppers());
        String request = cellar.coordinator().get("/requests/" + sowing).body();
        Map<String, String> offer = Cellar.hiddenFields(request, "/requests/" + sowing + "/placement");
        assertThat(cellar.coordinator()
                        .post("/requests/" + sowing + "/placement", offer)
                        .status())
                .isEqualTo(303);
        address = "/mats/"
                + Cellar.first(cellar.coordinator().get("/sites").body(), "/sites/mats/([0-9a-f-]{36})/change");
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void the_page_tells_what_lies_there_and_at_which_set_point() {
        Answer page = cellar.member().get(address);

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text()).contains("Mat M1", "Lantern Row", "hot 79 °F").doesNotContain("Set it");
    }

    @Test
    void a_set_point_that_suits_all_is_kept_and_shown() {
        Answer answer = cellar.coordinator()
                .post(address + "/set-points", Map.of("first", "2027-03-02", "last", "2027-06-30", "celsius", "82"));

        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        assertThat(cellar.member().get(address).text()).contains("hot 82 °F");
    }

    @Test
    void what_lies_there_and_cannot_bear_it_is_named() {
        Answer answer = cellar.coordinator()
                .post(address + "/set-points", Map.of("first", "2027-03-02", "last", "2027-06-30", "celsius", "68"));

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text()).contains("68 °F does not suit", "Lantern Row");
        assertThat(cellar.member().get(address).text()).contains("hot 79 °F");
    }

    @Test
    void a_set_point_beyond_the_thermostat_is_refused() {
        Answer answer = cellar.coordinator()
                .post(address + "/set-points", Map.of("first", "2027-03-02", "last", "2027-03-03", "celsius", "100"));

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text()).contains("Mat M1 can hold");
    }

    @Test
    void days_in_the_wrong_order_are_refused_and_what_was_typed_stays() {
        Answer answer = cellar.coordinator()
                .post(address + "/set-points", Map.of("first", "2027-03-09", "last", "2027-03-02", "celsius", "80"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("The last day was 2027-03-02, before the first day, 2027-03-09.");
        assertThat(answer.typed("celsius")).isEqualTo("80");
    }

    @Test
    void a_member_cannot_turn_a_mat_and_an_unknown_mat_is_not_found() {
        Map<String, String> fields = Map.of("first", "2027-03-02", "last", "2027-03-03", "celsius", "80");

        assertThat(cellar.member().post(address + "/set-points", fields).status())
                .isEqualTo(403);
        assertThat(cellar.member()
                        .get("/mats/00000000-0000-0000-0000-000000000000")
                        .status())
                .isEqualTo(404);
    }
}
