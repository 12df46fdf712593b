package warmshelf.news;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

/** A member's peppers are placed, looked at and refused by others; what of it Today tells, and until when. */
class NewsPagesTest {
    private Cellar cellar;
    private String peppers;

    @BeforeEach
    void ask() {
        cellar = Cellar.open();
        peppers = cellar.ask(Cellar.peppers());
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    private static String count(Browser browser, String path) {
        String body = browser.get(path).body();
        int from = body.indexOf("<span class=\"count\">");
        return from < 0 ? "" : body.substring(from + 20, body.indexOf('<', from + 20));
    }

    @Test
    void what_others_decide_is_counted_on_each_page_and_gone_on_every_device_once_the_sowing_was_opened() {
        Browser other = cellar.group().signedIn(cellar.group().member());
        assertThat(count(cellar.member(), "/frost")).isEmpty();
        cellar.placeAsSuggested(peppers);

        assertThat(count(cellar.member(), "/frost")).isEqualTo("1");
        assertThat(cellar.member().get("/today").text()).contains("New All seen Placed: Pepper");
        assertThat(count(cellar.coordinator(), "/today")).isEmpty();

        cellar.member().get("/sowings/" + peppers);

        assertThat(count(other, "/frost")).isEmpty();
        assertThat(other.get("/today").text()).doesNotContain("Placed: Pepper");
    }

    @Test
    void a_refusal_tells_its_reason() {
        cellar.coordinator()
                .post("/requests/" + peppers + "/refusal", Map.of("reason", "The cellar is full until May"));

        assertThat(cellar.member().get("/today").text()).contains("No place: Pepper", "“The cellar is full until May”");
    }

    @Test
    void a_problem_is_news_to_the_grower_not_to_whoever_noted_it() {
        cellar.placeAsSuggested(peppers);
        cellar.member().get("/sowings/" + peppers);
        cellar.tick(peppers, Map.of("step", "sown"));

        Browser neighbour = cellar.group().signedIn(cellar.group().onDuty());
        Answer noted = neighbour.post(
                "/sowings/" + peppers + "/entries", Map.of("step", "look", "problem", "dry", "sprouted", "0"));
        assertThat(noted.status()).as(noted.text()).isEqualTo(303);

        assertThat(cellar.member().get("/today").text())
                .as("the notice with its buttons stands there already")
                .contains("Today 1 new", "Too dry")
                .doesNotContain("Problem: Pepper");
        assertThat(count(neighbour, "/today")).isEmpty();
    }

    @Test
    void one_press_ends_all_and_a_moment_that_cannot_be_read_ends_nothing() {
        cellar.placeAsSuggested(peppers);
        Map<String, String> hidden =
                Cellar.hiddenFields(cellar.member().get("/today").body(), "/news/seen");

        assertThat(cellar.member().post("/news/seen", Map.of("until", "soon")).status())
                .isEqualTo(422);
        assertThat(count(cellar.member(), "/today")).isEqualTo("1");

        assertThat(cellar.member().post("/news/seen", hidden).status()).isEqualTo(303);
        assertThat(count(cellar.member(), "/today")).isEmpty();
    }
}
