package warmshelf.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.DUTY_AWAY;
import static warmshelf.db.generated.Tables.GERMINATION_TEST;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.jooq.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.Server;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** A form pressed twice, or sent again because the first answer got lost, counts once. */
class SentTwiceTest {
    private TestGroup group;
    private Browser coordinator;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        coordinator = group.signedIn(group.coordinator());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/seeds/new | /seeds | crop=pepper, variety=Lantern Row, year=2026, seeds=40, owner=mine,"
                        + " source=packet, storage=unknown",
                "/sites/new | /sites | name=Hall cellar, walkOrder=1, amps=15, volts=120, note=''",
                "/duty/mine | /duty/mine/away | first=2027-03-10, last=2027-03-12",
                "/frost/garden | /frost/garden/corrections | how=days, springDays=5, springWay=later, autumnWay=later,"
                        + " reason=a cold hollow by the creek",
                "/supplies | /supplies | id=5a0c1d0e-0000-4000-8000-000000000001, item=seed-compost, amount=20,"
                        + " whose=mine, note=''",
                "/people | /people/links | note=a neighbour, role=member"
            })
    void each_kind_of_adding_is_counted_once(String page, String address, String typed) {
        Map<String, String> fields = fields(typed);
        fields.put("submission", name(coordinator.get(page)));

        Answer first = coordinator.post(address, fields);
        int lines = audit();
        Answer second = coordinator.post(address, fields);

        assertThat(second.status()).isEqualTo(first.status());
        assertThat(second.location()).isEqualTo(first.location());
        assertThat(audit()).isEqualTo(lines);
    }

    @Test
    void asking_for_space_books_once_and_takes_a_new_packet_once() {
        Map<String, String> asked = Cellar.peppers();
        asked.put("submission", "the form on this page");

        Answer first = coordinator.post("/sowings", asked);
        Answer second = coordinator.post("/sowings", asked);

        assertThat(first.status()).isEqualTo(303);
        assertThat(second.location()).isEqualTo(first.location());
        assertThat(coordinator.get(second.location()).text()).contains("Sent. A coordinator will find it a place");
        assertThat(List.of(rows(SOWING), rows(SPACE_REQUEST), rows(LOT))).containsOnly(1);
    }

    @Test
    void away_days_and_seed_tests_are_kept_once() {
        Map<String, String> away = fields("first=2027-03-10, last=2027-03-12");
        away.put("submission", name(coordinator.get("/duty/mine")));
        coordinator.post("/duty/mine/away", away);
        coordinator.post("/duty/mine/away", away);
        String lot = coordinator
                .post(
                        "/seeds",
                        fields("crop=pepper, variety=Lantern Row, year=2026, seeds=40, owner=mine, source=packet,"
                                + " storage=unknown"))
                .location();
        Map<String, String> test = fields("testedOn=2027-02-20, testSeeds=10, germinated=8");
        test.put("submission", name(coordinator.get(lot)));
        coordinator.post(lot + "/tests", test);
        coordinator.post(lot + "/tests", test);

        assertThat(List.of(rows(DUTY_AWAY), rows(GERMINATION_TEST))).containsOnly(1);
    }

    @Test
    void a_form_that_was_refused_may_be_sent_again_as_it_is_or_corrected() {
        Map<String, String> site = fields("name='', walkOrder=1, amps=15, volts=120, note=''");
        site.put("submission", "the form on this page");

        assertThat(coordinator.post("/sites", site).status()).isEqualTo(422);
        assertThat(coordinator.post("/sites", site).status()).isEqualTo(422);
        site.put("name", "Hall cellar");
        assertThat(coordinator.post("/sites", site).status()).isEqualTo(303);
    }

    /** The browser's Back brings the form again with its old name; filled in anew it means another thing. */
    @Test
    void the_same_form_filled_in_anew_is_another_one() {
        Map<String, String> lot = fields(
                "crop=pepper, variety=Lantern Row, year=2026, seeds=40, owner=mine, source=packet, storage=unknown");
        lot.put("submission", "the form on this page");
        coordinator.post("/seeds", lot);
        lot.put("variety", "Ore Dock Sweet");
        coordinator.post("/seeds", lot);

        assertThat(rows(LOT)).isEqualTo(2);
    }

    @Test
    void two_people_with_the_same_form_are_two() {
        Map<String, String> lot = fields(
                "crop=pepper, variety=Lantern Row, year=2026, seeds=40, owner=mine, source=packet, storage=unknown");
        lot.put("submission", "the form on this page");
        coordinator.post("/seeds", lot);
        group.signedIn(group.member()).post("/seeds", lot);

        assertThat(rows(LOT)).isEqualTo(2);
    }

    @Test
    void after_a_restart_the_same_form_still_counts_once_and_says_so() {
        Map<String, String> asked = Cellar.peppers();
        asked.put("submission", "the form on this page");
        coordinator.post("/sowings", asked);

        try (Server again = group.anotherNode()) {
            Browser there = Browser.at(again.address());
            there.setCookie("warmshelf", String.valueOf(coordinator.cookie("warmshelf")));
            Answer answer = there.post("/sowings", asked);

            assertThat(answer.status()).isEqualTo(303);
            assertThat(there.get("/today").text()).contains("it counts once");
        }
        assertThat(rows(SOWING)).isEqualTo(1);
    }

    @Test
    void many_presses_at_the_same_moment_count_once_and_all_lead_to_the_same_page() throws Exception {
        Map<String, String> asked = Cellar.peppers();
        asked.put("submission", "the form on this page");
        asked.put("csrf", String.valueOf(coordinator.token()));
        ExecutorService crowd = Executors.newFixedThreadPool(6);
        List<Future<Answer>> answers = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Browser each = Browser.at(group.server().address());
            each.setCookie("warmshelf", String.valueOf(coordinator.cookie("warmshelf")));
            answers.add(crowd.submit(() -> each.postAsIs("/sowings", asked)));
        }
        List<String> locations = new ArrayList<>();
        for (Future<Answer> answer : answers) {
            locations.add(answer.get(30, TimeUnit.SECONDS).location());
        }
        crowd.shutdown();

        assertThat(locations).containsOnly(locations.get(0)).doesNotContain("");
        assertThat(rows(SOWING)).isEqualTo(1);
    }

    private static String name(Answer page) {
        String name = page.typed("submission");
        assertThat(name).as("the page's forms have names").isNotEmpty();
        return UUID.fromString(String.valueOf(name)).toString();
    }

    private int rows(Table<?> table) {
        return group.database().sql().fetchCount(table);
    }

    private int audit() {
        return group.database().sql().fetchCount(AUDIT_LINE);
    }

    private static Map<String, String> fields(String typed) {
        Map<String, String> fields = new HashMap<>();
        for (String each : typed.split(", ", -1)) {
            String[] pair = each.split("=", 2);
            fields.put(pair[0], pair[1].equals("''") ? "" : pair[1]);
        }
        return fields;
    }
}
