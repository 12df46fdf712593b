package warmshelf.leaving;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;

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

/** What becomes of all that somebody leaves, on every database. */
abstract class LeavingContract {
    private Cellar cellar;
    private TestGroup group;
    private Browser coordinator;
    private UUID tom;
    private UUID priya;
    private String page;

    protected abstract TestDatabase database();

    @BeforeEach
    void open() {
        group = TestGroup.open(database());
        cellar = Cellar.in(group);
        coordinator = cellar.coordinator();
        tom = group.member().id();
        priya = group.onDuty().id();
        page = "/people/" + tom + "/leaving";
    }

    @AfterEach
    void close() {
        // null where the database is missing and the test is skipped
        if (cellar != null) {
            cellar.close();
        }
    }

    @Test
    void who_leaves_nothing_is_gone_with_one_press_after_a_page_that_says_so() {
        assertThat(coordinator.get(page).text()).contains("Nothing is left behind");

        assertThat(coordinator.post(page).status()).isEqualTo(303);
        assertThat(coordinator.get("/people").text()).contains("Have left: 1 Tom Okafor Take it back");
    }

    @Test
    void the_page_lists_trays_requests_days_on_duty_and_seed() {
        String sowing = cellar.ask(Cellar.peppers());
        String turn = turn("2027-03-05", tom);

        Answer answer = coordinator.get(page);

        assertThat(answer.text())
                .contains("Asked for, not sown yet: 1")
                .contains("Pepper, sweet and mild hot · Lantern Row, planned")
                .contains("Days on duty: 1")
                .contains("Fri 5 Mar, Hall cellar")
                .contains("Seed: 1")
                .contains("Lantern Row 2027, 40 seeds");
        assertThat(answer.body()).contains("name=\"request/" + sowing + "\"").contains("name=\"turn/" + turn + "\"");
    }

    @Test
    void nobody_goes_before_everything_is_decided() {
        cellar.ask(Cellar.peppers());

        Answer answer = coordinator.post(page);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text())
                .contains("Please choose what becomes of Pepper, sweet and mild hot · Lantern Row, planned")
                .contains("Please choose what becomes of Pepper, sweet and mild hot · Lantern Row 2027, 40 seeds");
        assertThat(coordinator.get("/people").text()).doesNotContain("Have left");
    }

    @Test
    void what_is_handed_over_needs_somebody_present_who_takes_it() {
        String sowing = cellar.ask(Cellar.peppers());
        Map<String, String> decided = decided(sowing, "handed-over", "to-group", tom);

        assertThat(coordinator.post(page, decided).text()).contains("Please choose from the list who takes over.");
        decided.put("receiver", "");
        assertThat(coordinator.post(page, decided).status()).isEqualTo(422);
        decided.put("receiver", new UUID(0, 7).toString());
        assertThat(coordinator.post(page, decided).status()).isEqualTo(422);
        decided.put("request/" + sowing, "kept");
        assertThat(coordinator.post(page, decided).text()).contains("Please choose what becomes of Pepper");
    }

    @Test
    void a_request_is_withdrawn_seed_goes_to_the_group_and_a_day_stands_empty() {
        String sowing = cellar.ask(Cellar.peppers());
        String turn = turn("2027-03-05", tom);
        Map<String, String> decided = decided(sowing, "withdrawn", "to-group", priya);
        decided.put("turn/" + turn, "emptied");

        Answer answer = coordinator.post(page, decided);

        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        assertThat(stage(sowing)).isEqualTo("withdrawn");
        assertThat(value(LOT.OWNER_ID)).isNull();
        assertThat(group.database().sql().fetchCount(DUTY)).isZero();
    }

    @Test
    void trays_days_and_seed_go_to_whoever_takes_over() {
        String sowing = cellar.ask(Cellar.peppers());
        sown(sowing);
        String turn = turn("2027-03-05", tom);
        Map<String, String> decided = decided(sowing, "handed-over", "handed-over", priya);
        decided.put("tray/" + sowing, decided.remove("request/" + sowing));
        decided.put("turn/" + turn, "handed-over");

        Answer answer = coordinator.post(page, decided);

        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        assertThat(group.signedIn(group.onDuty()).get("/sowings").text()).contains("Lantern Row");
        assertThat(value(SOWING.MEMBER_ID)).isEqualTo(priya);
        assertThat(value(LOT.OWNER_ID)).isEqualTo(priya);
        assertThat(value(DUTY.MEMBER_ID)).isEqualTo(priya);
    }

    @Test
    void a_leaving_is_taken_back_with_all_that_nobody_has_touched_since() {
        coordinator.post("/people/" + tom + "/role", Map.of("role", "coordinator"));
        String sowing = cellar.ask(Cellar.peppers());
        String early = turn("2027-03-05", tom);
        String late = turn("2027-03-06", tom);
        Map<String, String> decided = decided(sowing, "withdrawn", "taken-along", priya);
        decided.put("turn/" + early, "handed-over");
        decided.put("turn/" + late, "emptied");
        assertThat(coordinator.post(page, decided).status()).isEqualTo(303);
        assertThat(value(LOT.SEEDS_LEFT)).isEqualTo(0);
        turn("2027-03-06", priya);
        group.clock().advance(Duration.ofHours(23));

        Answer undone = coordinator.post(page + "/undo");

        assertThat(undone.status()).isEqualTo(303);
        assertThat(coordinator.get("/people").text())
                .contains("Tom Okafor is back, with the 3 things that were left. Others have changed 1 since; it stays"
                        + " as it is.")
                .contains("Tom Okafor Coordinator");
        assertThat(stage(sowing)).isEqualTo("planned");
        assertThat(value(SPACE_REQUEST.STATE)).isEqualTo("waiting");
        assertThat(value(LOT.SEEDS_LEFT)).isEqualTo(40);
        assertThat(group.database().sql().fetchValues(DUTY.MEMBER_ID)).containsExactlyInAnyOrder(tom, priya);
        assertThat(coordinator.post(page + "/undo").status()).isEqualTo(409);
    }

    @Test
    void after_a_day_it_can_no_longer_be_taken_back() {
        coordinator.post(page);
        group.clock().advance(Duration.ofHours(25));

        assertThat(coordinator.get("/people").text())
                .doesNotContain("Take it back")
                .contains("Is back");
        assertThat(coordinator.post(page + "/undo").status()).isEqualTo(409);
    }

    @Test
    void only_coordinators_let_somebody_go_and_only_once() {
        assertThat(group.signedIn(group.onDuty()).get(page).status()).isEqualTo(403);
        assertThat(group.signedIn(group.onDuty()).post(page).status()).isEqualTo(403);
        coordinator.post(page);
        assertThat(coordinator.get(page).status()).isEqualTo(409);
        assertThat(coordinator.post(page).status()).isEqualTo(409);
    }

    private Map<String, String> decided(String sowing, String request, String lot, UUID receiver) {
        Map<String, String> decided = new HashMap<>();
        decided.put("request/" + sowing, request);
        decided.put("lot/" + value(LOT.ID), lot);
        decided.put("receiver", receiver.toString());
        return decided;
    }

    private String turn(String day, UUID member) {
        UUID site = group.database().sql().fetchValue(warmshelf.db.generated.Tables.SITE.ID);
        coordinator.post("/duty", Map.of("duty/" + site + "/" + day, member.toString()));
        return site + "/" + day;
    }

    private void sown(String sowing) {
        group.database()
                .sql()
                .update(SOWING)
                .set(SOWING.STAGE, "sown")
                .where(SOWING.ID.eq(UUID.fromString(sowing)))
                .execute();
    }

    private String stage(String sowing) {
        return group.database()
                .sql()
                .fetchSingle(SOWING, SOWING.ID.eq(UUID.fromString(sowing)))
                .getStage();
    }

    private <T> T value(org.jooq.TableField<?, T> field) {
        return group.database().sql().fetchValue(field);
    }
}
