package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

class WithdrawalPagesTest {
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
    void withdrawing_asks_first_and_says_what_is_given_up() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);

        String page = cellar.member().get("/sowings/" + sowing + "/withdrawal").text();

        assertThat(page)
                .contains("Withdraw Pepper, sweet and mild hot · Lantern Row?")
                .containsPattern(
                        "Its place: Hall cellar · North rack · shelf 1 · mat M1 · place 1, left half, [A-Z][a-z]{2} ")
                .containsPattern("The [0-9]+ seeds of Lantern Row");
        assertThat(cellar.member().get("/sowings/" + sowing).text()).doesNotContain("withdrawn");
    }

    @Test
    void what_had_no_place_is_not_said_to_free_one() {
        String sowing = cellar.ask(Cellar.peppers());
        assertThat(cellar.member().get("/sowings/" + sowing + "/withdrawal").text())
                .contains("It has none yet, so none comes free.");

        cellar.member().post("/sowings/" + sowing + "/withdrawal", Map.of());

        assertThat(cellar.member().get("/sowings/" + sowing).text())
                .contains("Withdrawn. It had no place, so none comes free.")
                .doesNotContain("free for someone else");
    }

    @Test
    void a_withdrawal_is_taken_back_from_the_notice_and_the_place_is_had_again() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        cellar.member().post("/sowings/" + sowing + "/withdrawal", Map.of());
        String page = cellar.member().get("/sowings/" + sowing).body();
        assertThat(page)
                .contains("Withdrawn. Free again: Hall cellar")
                .contains("action=\"/sowings/" + sowing + "/withdrawal/undoing\"");

        Answer back = cellar.member().post("/sowings/" + sowing + "/withdrawal/undoing", Map.of());

        assertThat(back.status()).as(back.text()).isEqualTo(303);
        assertThat(cellar.member().get("/sowings/" + sowing).text())
                .contains("Not withdrawn any more. It has its place again: Hall cellar");
        assertThat(cellar.member()
                        .post("/sowings/" + sowing + "/withdrawal/undoing", Map.of())
                        .status())
                .isEqualTo(409);
    }

    @Test
    void what_is_sown_cannot_be_withdrawn_any_more() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        cellar.tick(sowing, Map.of("step", "sown"));

        assertThat(cellar.member().get("/sowings/" + sowing + "/withdrawal").status())
                .isEqualTo(409);
        assertThat(cellar.member()
                        .post("/sowings/" + sowing + "/withdrawal", Map.of())
                        .status())
                .isEqualTo(409);
    }
}
