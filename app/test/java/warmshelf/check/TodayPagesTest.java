package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;

import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
    void a_page_that_is_kept_already_comes_again_only_once_something_has_changed() {
        String sowing = sownBag();
        advance(7);
        Browser member = cellar.member();
        // the first still tells of what was done just before
        member.get("/today");
        String kept = member.get("/today").header("ETag");

        Answer unchanged = again(member, kept);
        Answer somebodyElses = again(cellar.group().signedIn(cellar.group().onDuty()), kept);
        cellar.tick(sowing, Map.of("step", "look", "sprouted", "2"));
        Answer changed = again(member, kept);

        assertThat(unchanged.status()).isEqualTo(304);
        assertThat(unchanged.body()).isEmpty();
        assertThat(unchanged.header("Cache-Control")).isEqualTo("no-store");
        assertThat(somebodyElses.status()).isEqualTo(200);
        assertThat(changed.status()).isEqualTo(200);
        assertThat(changed.body()).contains("2 so far");
    }

    private static Answer again(Browser browser, String kept) {
        return browser.send(
                browser.request("/today").header("If-None-Match", kept).GET());
    }

    @Test
    void what_to_do_is_said_once_on_the_page_and_each_check_leads_to_it() {
        sownBag();
        advance(7);

        String page = cellar.member().get("/today").body();

        Matcher how = Pattern.compile("href=\"#(how-[0-9a-f]+)\"").matcher(page);
        assertThat(how.find()).isTrue();
        assertThat(page).containsOnlyOnce("id=\"" + how.group(1) + "\"");
        assertThat(page).containsOnlyOnce("move that seed into a cell today, root down");
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
    void late_seed_says_the_chance_that_more_comes_and_offers_to_be_given_up() {
        String sowing = sownBag();
        advance(8);
        assertThat(cellar.member().get("/today").text()).doesNotContain("Give it up:");

        advance(15);
        cellar.tick(sowing, Map.of("step", "look", "sprouted", "0"));
        advance(1);
        Answer today = cellar.member().get("/today");

        assertThat(today.text()).contains("The chance that any more comes is about");
        assertThat(today.body()).contains("/sowings/" + sowing + "/entry?step=gave-up");
        assertThat(cellar.member()
                        .get("/sowings/" + sowing + "/entry?step=gave-up")
                        .body())
                .containsPattern("value=\"gave-up\"[^>]*(selected|checked)");
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

    @Test
    void one_thing_at_a_time_works_by_links_alone() {
        sownBag();
        advance(7);
        Browser member = cellar.member();
        Browser coordinator = cellar.group().signedIn(cellar.group().coordinator());

        Answer first = member.get("/today?show=one&at=1");
        assertThat(first.text()).contains("1 of 1:", "All else is done.", "All as a list");
        assertThat(first.body()).contains("name=\"then\" value=\"/today?show=one&amp;at=1\"");

        Answer both = coordinator.get("/today?show=one&at=1");
        assertThat(both.text()).contains("1 of 2: North rack · shelf 1 · mat M1", "Thermometer of mat M1", "One on");
        assertThat(both.body()).contains("href=\"/today?show=one&amp;at=2\">Next to do");
        assertThat(both.body())
                .as("what is ticked leads to the next card")
                .contains("name=\"then\" value=\"/today?show=one&amp;at=2\"");
        assertThat(coordinator.get("/today?show=one&at=99").text()).contains("2 of 2:", "Open the bag");
        assertThat(coordinator.get("/today?show=one&at=x").text()).contains("1 of 2:");
        String mat = Cellar.first(both.body(), "/mats/([0-9a-f-]{36})/readings");
        coordinator.post("/mats/" + mat + "/readings", Map.of("celsius", "26"));
        assertThat(coordinator.get("/today?show=one").text()).contains("2 of 2:", "Open the bag");
        assertThat(cellar.group()
                        .signedIn(cellar.group().onDuty())
                        .get("/today?show=one&at=1")
                        .text())
                .contains("Nothing of yours needs a look today.");
    }

    @Test
    void a_tick_made_one_at_a_time_leads_back_there() {
        String sowing = sownBag();
        advance(7);

        Answer ticked = cellar.tick(sowing, Map.of("step", "look", "nothing", "0", "then", "/today?show=one&at=2"));

        assertThat(ticked.location()).isEqualTo("/today?show=one&at=2");
    }

    @Test
    void a_look_that_is_done_is_not_offered_again_when_something_else_is_due() {
        String sowing = sownBag();
        advance(7);
        assertThat(cellar.member().get("/today").text()).contains("Your own sowings: 1 to do, 0 done");

        cellar.tick(sowing, Map.of("step", "look", "sprouted", "2"));
        Answer today = cellar.member().get("/today");

        assertThat(today.text())
                .contains("Looked at today by Tom: 2 so far", "Move sprouted seed to cells.")
                .contains("Your own sowings: 1 to do, 0 done")
                .doesNotContain("Look into the bag.");
        assertThat(today.body()).doesNotContain("name=\"nothing\"");

        cellar.tick(sowing, Map.of("step", "moved-to-cells", "moved", "2", "lightPlace", "home"));
        assertThat(cellar.member().get("/today").text())
                .contains("Moved to cells today by Tom", "Your own sowings: 0 to do, 1 done");
    }

    @Test
    void both_counts_on_the_page_count_thermometers_too() {
        sownBag();
        advance(7);
        Browser coordinator = cellar.group().signedIn(cellar.group().coordinator());

        assertThat(coordinator.get("/today?show=one&at=1").text())
                .contains("The whole round: 2 to do, 0 done", "1 of 2:");
    }

    @Test
    void one_item_is_had_by_itself_as_it_now_stands() {
        String sowing = sownBag();
        advance(7);
        cellar.tick(sowing, Map.of("step", "look", "sprouted", "2"));

        Answer item = cellar.member().get("/today/items/" + sowing);

        assertThat(item.status()).isEqualTo(200);
        assertThat(item.text()).contains("2 with roots showing still lie in the bag.");
        assertThat(item.body()).doesNotContain("<html");
        assertThat(cellar.member().get("/today/items/" + UUID.randomUUID()).status())
                .isEqualTo(404);
    }

    @Test
    void the_round_says_whose_it_is_so_that_a_phone_keeps_no_other_page_for_it() {
        assertThat(cellar.member().get("/today").header("X-Warmshelf-Member"))
                .isEqualTo(cellar.group().member().id().toString());
        assertThat(cellar.group().stranger().get("/today").header("X-Warmshelf-Member"))
                .isEmpty();
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
