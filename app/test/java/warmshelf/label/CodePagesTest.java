package warmshelf.label;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.SHORT_CODE;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

class CodePagesTest {
    private static final String ON_A_LABEL = "label__code\">([0-9A-Z]{3} [0-9A-Z]{3})<";

    private Cellar cellar;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    /** The codes of what was printed, in its order. */
    private List<String> printed(String scope, String take) {
        Answer printed = cellar.member().post("/labels/runs", Map.of("of", scope, "take", take));
        assertThat(printed.status()).as(printed.text()).isEqualTo(303);
        return Cellar.all(cellar.member().get(printed.location()).body(), ON_A_LABEL);
    }

    @Test
    void each_rack_shelf_and_mat_has_a_code_that_opens_its_page_and_never_changes() {
        List<String> keys =
                Cellar.all(cellar.member().get("/labels?of=places").body(), "value=\"(place-[0-9a-f-]{36})\"");
        List<String> codes =
                keys.stream().flatMap(key -> printed("places", key).stream()).toList();

        assertThat(codes).hasSize(4).doesNotHaveDuplicates();
        assertThat(opened(codes.get(0))).startsWith("/racks?site=").contains("#rack-");
        assertThat(opened(codes.get(1))).startsWith("/mats/");
        assertThat(opened(codes.get(3))).isEqualTo(opened(codes.get(0)));
        String rack = opened(codes.get(0));
        assertThat(cellar.member().get(rack.substring(0, rack.indexOf('#'))).body())
                .contains("id=\"" + rack.substring(rack.indexOf('#') + 1) + "\"");
        assertThat(printed("places", keys.get(0))).containsExactly(codes.get(0));
    }

    @Test
    void the_code_of_a_sowing_opens_it_scanned_in_capitals_or_typed_in_small_letters() {
        String sowing = cellar.ask(Cellar.peppers());

        String code = printed("sowing-" + sowing, "tray-" + sowing).get(0);

        assertThat(opened(code)).isEqualTo("/sowings/" + sowing);
        assertThat(cellar.coordinator().get("/c/" + code.replace(" ", "")).location())
                .isEqualTo("/sowings/" + sowing);
        assertThat(cellar.coordinator().get("/C/" + code.replace(" ", "")).location())
                .isEqualTo("/sowings/" + sowing);
        assertThat(opened(code.toLowerCase(java.util.Locale.ROOT).replace(' ', '-')))
                .isEqualTo("/sowings/" + sowing);
    }

    @Test
    void what_is_over_needs_no_label_any_more_but_its_old_one_still_opens() {
        String sowing = cellar.ask(Cellar.peppers());
        String code = printed("sowing-" + sowing, "tray-" + sowing).get(0);
        cellar.member().post("/sowings/" + sowing + "/withdrawal");

        assertThat(cellar.member().get("/labels?of=sowing-" + sowing).status()).isEqualTo(404);
        assertThat(opened(code)).isEqualTo("/sowings/" + sowing);
    }

    @Test
    void a_stranger_signs_in_before_a_scanned_code_opens_anything() {
        Answer answer = cellar.group().stranger().get("/c/K7P4MX");

        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo("/sign-in?then=%2Fc%2FK7P4MX");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "K7P | 422 | The code was 'K7P', which has 3 signs; a code has six.",
                "'' | 422 | The code is empty",
                "0OIL11 | 422 | no code has the sign '0'",
                "222222 | 404 | No rack, shelf, mat or sowing has the code '222 222'."
            })
    void a_code_that_opens_nothing_says_why_and_keeps_what_was_typed(String typed, int status, String sentence) {
        Answer answer = cellar.member().get("/code?code=" + typed);

        assertThat(answer.status()).isEqualTo(status);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.typed("code")).isEqualTo(typed);
        assertThat(cellar.group().database().sql().fetchCount(SHORT_CODE)).isZero();
    }

    private String opened(String code) {
        Answer answer = cellar.member().get("/code?code=" + code.replace(" ", "%20"));
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        return answer.location();
    }
}
