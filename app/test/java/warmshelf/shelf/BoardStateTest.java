package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

/** A board learns that somebody changed what it shows. */
class BoardStateTest {
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
    void a_board_names_the_state_that_it_shows_until_something_is_asked_for_placed_or_turned() {
        String empty = shown("/racks");
        assertThat(shown("/weeks")).isEqualTo(empty);
        assertThat(state()).isEqualTo(empty);

        String sowing = cellar.ask(Cellar.peppers());
        String asked = state();
        assertThat(asked).isNotEqualTo(empty);

        cellar.placeAsSuggested(sowing);
        String placed = state();
        assertThat(placed).isNotEqualTo(asked);
        assertThat(shown("/racks")).isEqualTo(placed);

        cellar.coordinator().post("/requests/" + sowing + "/return");
        assertThat(state()).isNotEqualTo(placed);
    }

    @Test
    void what_is_taken_out_of_service_changes_it_too() {
        String before = state();
        Map<String, String> out = new HashMap<>(Map.of("first", "2027-03-01", "last", "2027-03-04", "reason", "lent"));
        out.put("mat", Cellar.first(cellar.coordinator().get("/sites").body(), "/sites/mats/([0-9a-f-]{36})/change"));

        cellar.coordinator().post("/plans/out-of-service", out);

        assertThat(state()).isNotEqualTo(before);
    }

    @Test
    void strangers_are_told_nothing() {
        assertThat(cellar.group().stranger().get("/racks/state").status()).isIn(303, 401);
    }

    private String shown(String board) {
        return Cellar.first(cellar.member().get(board).body(), "data-state=\"([^\"]+)\"");
    }

    private String state() {
        Answer answer = cellar.member().get("/racks/state");
        return Cellar.first(answer.body(), "\"state\":\"([^\"]+)\"");
    }
}
