package warmshelf.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

class SeasonPageTest {
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
    void a_member_without_sowings_sees_no_picture() {
        assertThat(cellar.member().get("/sowings").body()).doesNotContain("season__days");
    }

    @Test
    void a_sowing_has_a_row_of_bars_and_marks_before_the_chance_of_frost() {
        String sowing = cellar.ask(Cellar.peppers());

        Answer page = cellar.member().get("/sowings");

        assertThat(page.body())
                .contains("href=\"/sowings/" + sowing + "\"><span>Lantern Row</span>")
                .contains("season__bar--heat-hot")
                .contains("season__bar--light")
                .contains("season__bar--hardening")
                .contains("season__bar--out")
                .containsOnlyOnce(", next</title>")
                .contains("season__frost--3")
                .doesNotContain("style=");
        assertThat(page.text()).contains("after these days your garden still has a spring frost");
    }

    @Test
    void the_table_says_the_same_as_the_drawing() {
        cellar.ask(Cellar.peppers());
        Answer page = cellar.member().get("/sowings");

        String bar = Cellar.first(page.body(), "<title>(on the heat [^<]*)</title>");
        String table = page.text().substring(page.text().indexOf("The season as a table"));

        assertThat(table).contains(bar);
        assertThat(table).contains("nothing yet").contains("next: ");
    }

    @Test
    void what_was_done_is_marked_so_and_the_next_step_moves_on() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        cellar.group().clock().advance(Duration.ofDays(25));
        cellar.tick(sowing, Map.of("step", "sown"));

        Answer page = cellar.member().get("/sowings");

        assertThat(page.body()).contains("<title>Sow, Fri 26 Mar, done</title>");
        assertThat(page.body()).doesNotContain(">Sow, Fri 26 Mar, next<");
    }

    @Test
    void what_ended_without_plants_is_not_drawn() {
        Map<String, String> unheated = new HashMap<>(Cellar.peppers());
        unheated.put("heat", "room");
        String sowing = cellar.ask(unheated);
        cellar.tick(sowing, Map.of("step", "sown"));
        cellar.tick(sowing, Map.of("step", "gave-up"));

        assertThat(cellar.member().get("/sowings").body()).doesNotContain("season__days");
    }
}
