package warmshelf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SEASON_CLOSING;
import static warmshelf.db.generated.Tables.SOWING;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;

/** A season is closed and the next one opened, on every database. */
abstract class SeasonTurnContract {
    private Cellar cellar;
    private TestGroup group;
    private Browser coordinator;
    private Browser member;

    protected abstract TestDatabase database();

    @BeforeEach
    void open() {
        group = TestGroup.open(database());
        cellar = Cellar.in(group);
        coordinator = cellar.coordinator();
        member = cellar.member();
    }

    @AfterEach
    void close() {
        // null where the database is missing and the test is skipped
        if (cellar != null) {
            cellar.close();
        }
    }

    @Test
    void what_is_not_over_is_listed_by_how_far_it_came_and_settled_by_one_press() {
        String sown = sown("2027-03-01");
        String planned = cellar.ask(otherPeppers());

        Answer page = coordinator.get("/season/close");
        assertThat(page.text())
                .contains("Sown, and no further noted: 1")
                .contains("Asked for, never sown: 1")
                .doesNotContain("Hardening off:");
        Answer closed = coordinator.post("/season/close", settled(Map.of()));

        assertThat(closed.status()).as(closed.text()).isEqualTo(303);
        assertThat(stage(sown)).isEqualTo("not-recorded");
        assertThat(stage(planned)).isEqualTo("withdrawn");
        assertThat(group.database().sql().fetchCount(QUARTER_DAY, QUARTER_DAY.ON_DAY.gt(TestGroup.TODAY)))
                .as("places still taken")
                .isZero();
        assertThat(coordinator.get("/season").text())
                .contains("Season 2027 is closed.")
                .contains("1 sowing of 1 member")
                .contains("Of 1 sowing nobody knows.");
    }

    @Test
    void before_the_last_frost_the_page_says_that_it_is_early_and_proposes_that_all_goes_on() {
        sown("2027-03-01");

        Answer early = coordinator.get("/season/close");
        group.clock().advance(Duration.ofDays(100));
        coordinator = group.signedIn(group.coordinator());
        Answer inTime = coordinator.get("/season/close");

        assertThat(early.text()).contains("It is early to close it.");
        assertThat(early.body()).contains("<option value=\"goes-on\" selected>");
        assertThat(inTime.text()).doesNotContain("It is early to close it.");
        assertThat(inTime.body()).contains("<option value=\"not-recorded\" selected>");
    }

    @Test
    void what_is_known_better_of_one_rules_over_the_answer_for_all() {
        String one = sown("2027-03-01");
        String other = cellar.ask(otherPeppers());
        cellar.placeAsSuggested(other);
        cellar.tick(other, tick("sown", "2027-03-01"));

        Answer closed = coordinator.post(
                "/season/close", settled(Map.of("coming-up", "given-up", "sowing/" + one, "planted-out")));

        assertThat(closed.status()).as(closed.text()).isEqualTo(303);
        assertThat(stage(one)).isEqualTo("planted-out");
        assertThat(stage(other)).isEqualTo("given-up");
    }

    @Test
    void what_goes_on_stays_under_way_and_on_its_place() {
        String sown = sown("2027-03-01");

        coordinator.post("/season/close", settled(Map.of("coming-up", "goes-on")));

        assertThat(stage(sown)).isEqualTo("sown");
        assertThat(member.get("/today").text()).contains("Lantern Row");
        assertThat(coordinator.get("/season").text()).contains("1 sowing goes on beyond the season.");
    }

    @Test
    void an_answer_that_cannot_be_is_refused_with_what_was_chosen_kept() {
        sown("2027-03-01");

        Answer refused =
                coordinator.post("/season/close", settled(Map.of("coming-up", "planted-out", "outOn", "2027-03-09")));
        Answer unknown = coordinator.post("/season/close", settled(Map.of("coming-up", "withdrawn")));
        Answer missing = coordinator.post("/season/close", Map.of("season", "2027"));

        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text())
                .contains("Planted out on was 9 Mar 2027; a day up to today, 1 Mar 2027, is accepted.");
        assertThat(refused.typed("outOn")).isEqualTo("2027-03-09");
        assertThat(unknown.text()).contains("Please choose what became of Sown, and no further noted");
        assertThat(missing.status()).isEqualTo(422);
        assertThat(group.database().sql().fetchCount(SEASON_CLOSING)).isZero();
    }

    @Test
    void a_season_is_closed_once() {
        coordinator.post("/season/close", settled(Map.of()));

        assertThat(coordinator.post("/season/close", settled(Map.of())).text())
                .contains("Season 2027 has been closed already.");
        assertThat(coordinator.get("/season/close").status()).isEqualTo(409);
        assertThat(group.database().sql().fetchCount(SEASON_CLOSING)).isOne();
    }

    @Test
    void the_next_is_not_opened_before_this_one_is_closed() {
        Answer answer = coordinator.post("/season/open", Map.of("season", "2028", "after", "2027"));

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text()).contains("Season 2027 is still under way. Close it first.");
        assertThat(season()).isEqualTo(2027);
    }

    @Test
    void nothing_is_asked_for_between_two_seasons() {
        coordinator.post("/season/close", settled(Map.of()));

        assertThat(member.get("/ask").text()).contains("Season 2027 is closed, so nothing can be asked for");
        Answer sent = member.post("/sowings", Cellar.peppers());
        assertThat(sent.status()).isEqualTo(422);
        assertThat(sent.text()).contains("until a coordinator opens the next one");
        assertThat(sent.typed("variety")).isEqualTo("Lantern Row");
        assertThat(group.database().sql().fetchCount(SOWING)).isZero();
    }

    @Test
    void the_next_season_begins_with_nothing_of_the_last_in_supplies_fairness_news_and_my_sowings() {
        sown("2027-03-01");
        coordinator.post("/season/close", settled(Map.of("coming-up", "goes-on")));

        Answer opened = coordinator.post("/season/open", Map.of("season", "2028", "after", "2027"));

        assertThat(opened.status()).as(opened.text()).isEqualTo(303);
        assertThat(season()).isEqualTo(2028);
        assertThat(coordinator.get("/season").text())
                .contains("Season 2028")
                .contains("Nothing has been asked for yet.")
                .contains("the last frost of season 2028 is over by");
        assertThat(member.get("/supplies").text()).contains("Nothing is needed.");
        assertThat(member.get("/plans/fairness").text()).contains("Nobody has asked for a warm place this season.");
        assertThat(member.get("/news").text()).doesNotContain("Lantern Row");
    }

    @Test
    void a_year_that_is_not_after_the_closed_one_is_refused() {
        coordinator.post("/season/close", settled(Map.of()));

        Answer answer = coordinator.post("/season/open", Map.of("season", "2027", "after", "2027"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("Season was '2027'; a whole number from 2028 to 2200 is accepted.");
        assertThat(answer.typed("season")).isEqualTo("2027");
    }

    @Test
    void two_coordinators_who_open_it_open_it_once() {
        coordinator.post("/season/close", settled(Map.of()));
        coordinator.post("/season/open", Map.of("season", "2028", "after", "2027"));

        Answer second = coordinator.post("/season/open", Map.of("season", "2029", "after", "2027"));

        assertThat(second.status()).isEqualTo(409);
        assertThat(second.text()).contains("The group works towards season 2028 already.");
        assertThat(season()).isEqualTo(2028);
    }

    @Test
    void opening_and_closing_are_taken_back_while_nothing_hangs_on_them() {
        coordinator.post("/season/close", settled(Map.of()));
        coordinator.post("/season/open", Map.of("season", "2028", "after", "2027"));

        assertThat(coordinator.post("/season/open/undo").status()).isEqualTo(303);
        assertThat(season()).isEqualTo(2027);
        assertThat(member.get("/ask").text()).contains("Season 2027 is closed");
        assertThat(coordinator.post("/season/close/undo").status()).isEqualTo(303);
        assertThat(member.get("/ask").text()).doesNotContain("is closed");
        assertThat(coordinator.post("/season/close/undo").status()).isEqualTo(409);
    }

    @Test
    void an_opening_stands_once_something_was_asked_for() {
        coordinator.post("/season/close", settled(Map.of()));
        coordinator.post("/season/open", Map.of("season", "2028", "after", "2027"));
        cellar.ask(Cellar.peppers());

        Answer answer = coordinator.post("/season/open/undo");

        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.text()).contains("1 sowing was asked for in season 2028, so this cannot be done any more.");
        assertThat(coordinator.post("/season/close/undo").status()).isEqualTo(409);
    }

    @Test
    void a_season_that_was_named_wrongly_is_named_anew_until_something_was_asked_for() {
        assertThat(coordinator.post("/season/name", Map.of("season", "2028")).status())
                .isEqualTo(303);
        assertThat(season()).isEqualTo(2028);
        cellar.ask(Cellar.peppers());

        assertThat(coordinator.post("/season/name", Map.of("season", "2027")).status())
                .isEqualTo(409);
        assertThat(season()).isEqualTo(2028);
    }

    @Test
    void whoever_knows_what_became_of_it_says_so_later_and_the_kept_figures_stay() {
        String sown = sown("2027-03-01");
        coordinator.post("/season/close", settled(Map.of()));

        Answer late = cellar.tick(sown, tick("planted-out", "2027-03-01"));

        assertThat(late.status()).as(late.text()).isEqualTo(303);
        assertThat(stage(sown)).isEqualTo("planted-out");
        assertThat(coordinator.get("/season/2027").text())
                .contains("As it was then: 1 sowing of 1 member")
                .contains("Of 1 sowing nobody knows.")
                .contains("Lantern Row");
    }

    @Test
    void a_season_that_is_over_is_read_with_its_sowings_found_by_crop_variety_or_grower() {
        sown("2027-03-01");
        cellar.ask(otherPeppers());
        group.clock().advance(Duration.ofDays(25));
        coordinator.post("/season/close", settled(Map.of()));
        coordinator.post("/season/open", Map.of("season", "2028", "after", "2027"));

        assertThat(member.get("/season/2027?words=LANTERN").text())
                .contains("1 sowing.")
                .contains("Lantern Row")
                .contains("Racks on");
        assertThat(member.get("/season/2027?words=100%25").text()).contains("0 sowings.");
        assertThat(group.signedIn(group.onDuty()).get("/season/2027?whose=mine").text())
                .contains("0 sowings.");
        assertThat(member.get("/season/2027?page=7").status()).isEqualTo(200);
        assertThat(member.get("/season/2026").status()).isEqualTo(404);
        assertThat(member.get("/season/2028").status()).isEqualTo(404);
    }

    @Test
    void last_seasons_sowings_are_gathered_by_one_press_and_sent_for_the_new_one() {
        String sown = sown("2027-03-01");
        coordinator.post("/season/close", settled(Map.of()));
        group.clock().advance(Duration.ofDays(330));
        coordinator = group.signedIn(group.coordinator());
        member = group.signedIn(group.member());
        coordinator.post("/season/open", Map.of("season", "2028", "after", "2027"));
        assertThat(member.get("/today").text()).contains("Ask again for what you grew in 2027");
        assertThat(member.get("/sowings").text()).doesNotContain("Lantern Row");

        assertThat(member.post("/ask/again").status()).isEqualTo(303);
        assertThat(member.post("/ask/again").status()).isEqualTo(303);

        Answer ask = member.get("/ask");
        assertThat(ask.text())
                .contains("1 gathered, not sent yet")
                .contains("Lantern Row")
                .contains("Send it");
        Answer sent = member.post("/ask/gathered/sending", Cellar.hiddenFields(ask.body(), "/ask/gathered/sending"));
        assertThat(sent.location()).as(ask.text()).isEqualTo("/sowings");
        assertThat(group.database()
                        .sql()
                        .select(SOWING.SEASON)
                        .from(SOWING)
                        .where(SOWING.ID.ne(UUID.fromString(sown)))
                        .fetch(SOWING.SEASON))
                .containsExactly(2028);
        assertThat(member.get("/today").text()).doesNotContain("Ask again for what you grew");
    }

    @Test
    void members_read_the_season_and_do_not_turn_it() {
        assertThat(member.get("/season").text()).contains("A coordinator closes it");
        assertThat(member.get("/season/close").status()).isEqualTo(403);
        assertThat(member.post("/season/close", settled(Map.of())).status()).isEqualTo(403);
        assertThat(member.post("/season/open", Map.of("season", "2028", "after", "2027"))
                        .status())
                .isEqualTo(403);
        assertThat(member.post("/season/name", Map.of("season", "2028")).status())
                .isEqualTo(403);
    }

    private static Map<String, String> settled(Map<String, String> otherwise) {
        Map<String, String> fields = new HashMap<>(Map.of(
                "season", "2027",
                "outside", "planted-out",
                "growing", "planted-out",
                "coming-up", "not-recorded",
                "had-a-place", "not-recorded",
                "not-sown", "withdrawn",
                "outOn", "2027-03-01"));
        fields.putAll(otherwise);
        return fields;
    }

    private static Map<String, String> otherPeppers() {
        Map<String, String> other = Cellar.peppers();
        other.put("variety", "Quay Light");
        return other;
    }

    /** Placed and sown on a day. */
    private String sown(String day) {
        String sowing = cellar.ask(Cellar.peppers());
        cellar.placeAsSuggested(sowing);
        Answer ticked = cellar.tick(sowing, tick("sown", day));
        assertThat(ticked.status()).as(ticked.text()).isEqualTo(303);
        return sowing;
    }

    private static Map<String, String> tick(String step, String day) {
        return Map.of("id", UUID.randomUUID().toString(), "step", step, "seenOn", day, "note", "");
    }

    private String stage(String sowing) {
        return group.database()
                .sql()
                .fetchSingle(SOWING, SOWING.ID.eq(UUID.fromString(sowing)))
                .getStage();
    }

    private int season() {
        return group.database().sql().fetchValue(GROUP_PROFILE.SEASON);
    }
}
