package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;

import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class TodayPagesTest {
    private static final String PLACE = "value=\"([0-9a-f-]{36}/[1-4])\" selected";

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
    void a_member_sees_their_own_round_and_the_whole_one_when_asked_for() {
        String sowing = sownBag();
        advance(7);
        Browser neighbour = cellar.group().signedIn(cellar.group().onDuty());
        Browser coordinator = cellar.group().signedIn(cellar.group().coordinator());

        assertThat(cellar.member().get("/today").body()).contains("s-" + sowing);
        assertThat(neighbour.get("/today").body()).doesNotContain("s-" + sowing);
        assertThat(neighbour.get("/today?show=all").body()).contains("s-" + sowing);
        assertThat(coordinator.get("/today").body()).contains("s-" + sowing);
        assertThat(coordinator.get("/today?show=mine").body()).doesNotContain("s-" + sowing);
        assertThat(cellar.group().stranger().get("/today").location()).startsWith("/sign-in");
    }

    @Test
    void the_first_seeds_moved_from_the_round_leave_the_bag_on_its_mat() {
        String sowing = sownBag();
        advance(7);
        cellar.tick(sowing, Map.of("step", "look", "sprouted", "6"));
        String round = cellar.member().get("/today").body();
        Map<String, String> moved =
                new HashMap<>(Map.of("step", "moved-to-cells", "moved", "4", "lightPlace", Cellar.first(round, PLACE)));

        assertThat(cellar.tick(sowing, moved).status()).isEqualTo(303);

        assertThat(taken("mat")).isEqualTo(1);
        assertThat(taken("lit")).isEqualTo(2);
        assertThat(cellar.member().get("/today").text())
                .contains("2 with roots showing still lie in the bag.")
                .contains("Its cells stay where they lie under the light.");
    }

    @Test
    void a_sowing_of_a_crop_that_is_not_listed_any_more_is_still_looked_at() {
        String sowing = sownBag();
        advance(7);
        cellar.group()
                .database()
                .sql()
                .update(SOWING)
                .set(SOWING.CROP_ID, "sky-turnip")
                .where(SOWING.ID.eq(UUID.fromString(sowing)))
                .execute();

        Answer today = cellar.member().get("/today");

        assertThat(today.status()).isEqualTo(200);
        assertThat(today.text()).contains("sky-turnip · Lantern Row", "Open the bag: does a root show?");
        assertThat(cellar.tick(sowing, Map.of("step", "look", "sprouted", "2")).status())
                .isEqualTo(303);
        assertThat(cellar.member().get("/sowings/" + sowing).status()).isEqualTo(200);
        assertThat(cellar.member().get("/sowings").status()).isEqualTo(200);
    }

    private String sownBag() {
        Map<String, String> asked = Cellar.peppers();
        asked.put("method", "bag");
        String sowing = cellar.ask(asked);
        assertThat(cellar.placeAsSuggested(sowing).status()).isEqualTo(303);
        LocalDate start = cellar.group()
                .database()
                .sql()
                .select(DSL.min(QUARTER_DAY.ON_DAY))
                .from(QUARTER_DAY)
                .fetchSingle()
                .value1();
        advance(start.toEpochDay() - TestGroup.TODAY.toEpochDay());
        cellar.tick(sowing, Map.of("step", "sown"));
        return sowing;
    }

    private void advance(long days) {
        cellar.group().clock().advance(Duration.ofDays(days));
    }

    private int taken(String kind) {
        LocalDate today = LocalDate.ofInstant(cellar.group().clock().instant(), java.time.ZoneId.of("America/Chicago"));
        return cellar.group()
                .database()
                .sql()
                .fetchCount(QUARTER_DAY, QUARTER_DAY.KIND.eq(kind).and(QUARTER_DAY.ON_DAY.eq(today)));
    }
}
