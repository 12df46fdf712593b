package warmshelf.harvest;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

class HarvestPagesTest {
    private Cellar cellar;
    private Browser member;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
        member = cellar.member();
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void with_nothing_planted_out_there_is_nothing_to_ask() {
        assertThat(member.get("/harvest").text()).contains("so there is nothing to ask");
    }

    @Test
    void it_is_asked_in_autumn_answered_with_a_press_and_stands_beside_the_seed() {
        String sowing = plantedOut();
        assertThat(member.get("/today").text()).doesNotContain("How was it?");

        cellar.group().clock().advance(Duration.ofDays(125));
        member = cellar.group().signedIn(cellar.group().member());
        assertThat(member.get("/today").text()).contains("How was it? 1 thing you planted out");

        Answer kept = member.post("/harvest", Map.of("again-" + sowing, "again", "amount-" + sowing, "plenty"));
        assertThat(kept.status()).isEqualTo(303);
        assertThat(member.get("/today").text()).doesNotContain("How was it?");
        assertThat(member.get("/findings").text()).contains("Again: 1 of 1 who grew it. Enough or plenty: 1 of 1.");
        String lot = Cellar.first(member.get("/seeds").body(), "(/seeds/[0-9a-f-]{36})");
        assertThat(member.get(lot).text()).contains("Grown here Again: 1 of 1 who grew it.");
    }

    private String plantedOut() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        for (String step : List.of("sown", "under-light", "planted-out")) {
            assertThat(cellar.tick(sowing, Map.of("step", step, "lightPlace", "home"))
                            .status())
                    .as(step)
                    .isEqualTo(303);
        }
        return sowing;
    }

    @Test
    void a_day_before_planting_out_is_refused_and_nothing_typed_is_lost() {
        String sowing = plantedOut();

        Answer again = member.post(
                "/harvest", Map.of("first-" + sowing, "2020-01-01", "trouble-" + sowing, "slugs on the first day"));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.text()).contains("2020-01-01; a day from").contains("slugs on the first day");
    }
}
