package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Browser;

/** Marks on Racks and Weeks: what others changed, until it is seen, and what is due today. */
class BoardMarksPagesTest {
    private Cellar cellar;
    private Browser tom;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
        tom = cellar.member();
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    @Test
    void what_was_placed_since_is_marked_on_both_boards_until_it_is_seen() {
        String sowing = cellar.ask(Cellar.peppers());
        tom.get("/racks");
        cellar.group().clock().advance(Duration.ofHours(1));
        cellar.placeAsSuggested(sowing);
        cellar.group().clock().advance(Duration.ofHours(1));

        assertThat(tom.get("/weeks").body())
                .contains("◆ Pepper", "placed since you last looked", "Since you last looked", "1 tray was placed");
        assertThat(tom.get("/racks?day=2027-03-25").body()).contains("◆ Pepper", "placed since you last looked");
        assertThat(cellar.group()
                        .signedIn(cellar.group().onDuty())
                        .get("/weeks")
                        .text())
                .doesNotContain("Since you last looked");
        assertThat(cellar.coordinator().get("/weeks").body()).doesNotContain("◆ Pepper");

        cellar.group().clock().advance(Duration.ofHours(1));
        assertThat(tom.get("/weeks").body()).doesNotContain("◆ Pepper").contains("Pepper");
    }

    @Test
    void a_place_that_was_freed_is_told_to_whose_it_was() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        tom.get("/weeks");
        cellar.group().clock().advance(Duration.ofHours(1));
        String stay = Cellar.first(cellar.coordinator().get("/weeks").body(), "/stays/([0-9a-f-]{36})");
        assertThat(cellar.coordinator()
                        .post("/stays/" + stay + "/release", Map.of("reason", "Room is needed", "version", "1"))
                        .status())
                .isEqualTo(303);
        cellar.group().clock().advance(Duration.ofHours(1));

        assertThat(tom.get("/racks").text()).contains("Since you last looked", "was freed");
    }

    @Test
    void a_tray_at_which_something_is_due_today_is_marked_on_the_racks_of_today_alone() {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        cellar.group().clock().advance(Duration.ofDays(23));
        Browser then = cellar.group().signedIn(cellar.group().member());

        assertThat(then.get("/racks").body()).contains("! Pepper", "something is to do at it today besides looking");
        assertThat(then.get("/racks?day=2027-03-26").body()).doesNotContain("! Pepper");
    }
}
