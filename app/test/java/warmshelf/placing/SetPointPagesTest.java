package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.words.DayWords;

/** A mat's page: reading it, and turning it without harm to what lies there. */
class SetPointPagesTest {
    private Cellar cellar;
    private String address;
    private String sowing;

    @BeforeEach
    void lay_peppers_on_the_warm_mat() {
        cellar = Cellar.open();
        sowing = cellar.ask(Cellar.peppers());
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

    @ParameterizedTest
    @CsvSource({"F, 68, 90", "C, 20, 32"})
    void every_whole_degree_that_the_mat_can_hold_is_read_as_it_was_typed(String unit, int least, int most) {
        read(cellar.coordinator(), "Ilse", unit);
        LocalDate first = LocalDate.of(2027, 8, 1);
        for (int degree = least; degree <= most; degree++) {
            String day = first.plusDays(degree).toString();
            Answer answer = cellar.coordinator()
                    .post(
                            address + "/set-points",
                            Map.of("first", day, "last", day, "celsius", String.valueOf(degree)));
            assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        }

        String page = cellar.coordinator().get(address).text();
        for (int degree = least; degree <= most; degree++) {
            assertThat(page)
                    .containsPattern(
                            DayWords.day(first.plusDays(degree)) + " (cool|warm|hot|very hot) " + degree + " °" + unit);
        }
    }

    @Test
    void eighty_one_fahrenheit_is_read_as_that_everywhere_whoever_else_reads_celsius() {
        String sites = cellar.coordinator().get("/sites").body();
        String form = "/sites/mats/" + address.substring("/mats/".length()) + "/change";
        Map<String, String> mat = new HashMap<>(Map.of("name", "M1", "walkOrder", "1", "places", "2", "watts", "45"));
        mat.putAll(Map.of("low", "68", "high", "91", "usual", "81", "version", "1"));
        assertThat(sites).contains(form);
        assertThat(cellar.coordinator().post(form, mat).status()).isEqualTo(303);
        cellar.coordinator()
                .post(address + "/set-points", Map.of("first", "2027-03-02", "last", "2027-06-30", "celsius", "81"));

        assertReads("81 °F", "68 °F to 91 °F");

        read(cellar.coordinator(), "Ilse", "C");
        assertReads("27 °C", "20 °C to 33 °C");
        Answer shown = cellar.coordinator().get(form);
        for (String field : List.of("low", "high", "usual", "version")) {
            mat.put(field, String.valueOf(shown.typed(field)));
        }
        assertThat(mat).containsEntry("usual", "27").containsEntry("high", "33");
        assertThat(cellar.coordinator().post(form, mat).status()).isEqualTo(303);

        read(cellar.coordinator(), "Ilse", "F");
        assertReads("81 °F", "68 °F to 91 °F");
    }

    private void assertReads(String setPoint, String thermostat) {
        assertThat(cellar.coordinator().get(address).text()).contains("hot " + setPoint, thermostat);
        assertThat(cellar.coordinator().get("/sites").text()).contains("hot " + setPoint, thermostat);
        assertThat(cellar.coordinator().get("/racks?day=2027-04-20").text()).contains(setPoint);
        assertThat(cellar.coordinator().get("/weeks?from=2027-04-05").text()).contains(setPoint);
        assertThat(cellar.coordinator().get("/sowings/" + sowing).text()).contains("hot " + setPoint);
    }

    /** Has somebody read another unit. */
    private void read(Browser reader, String name, String unit) {
        String version = String.valueOf(reader.get("/settings").typed("version"));
        Map<String, String> settings = Map.of(
                "name",
                name,
                "country",
                "US",
                "postcode",
                "55805",
                "temperature",
                unit,
                "length",
                "group",
                "version",
                version);
        assertThat(reader.post("/settings", settings).status()).isEqualTo(303);
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
