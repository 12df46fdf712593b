package warmshelf.finding.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.TRIAL;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class TrialPagesTest {
    private TestGroup group;
    private Browser member;
    private UUID lot;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        member = group.signedIn(group.member());
        UUID owner = group.member().id();
        lot = new LotStore(group.database(), group.audit())
                .add(new NewLot("pepper", "Lantern Row", 2026, 120, owner, false, ""), owner);
    }

    @AfterEach
    void close() {
        group.close();
    }

    private Map<String, String> bagOrTray() {
        return new HashMap<>(Map.of(
                "lot", lot.toString(), "kind", "method", "seedsEach", "20", "blocks", "1", "sowOn", "2027-03-06"));
    }

    private static String query(Map<String, String> fields) {
        return fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    @Test
    void before_it_is_declared_the_page_says_what_it_can_show_and_keeps_nothing() {
        Answer plan = member.get("/trials/plan?" + query(bagOrTray()));

        assertThat(plan.status()).isEqualTo(200);
        assertThat(plan.text())
                .contains("Of 20 seeds of each way about")
                .contains("would show in 8 such trials of 10")
                .contains("To find a difference of")
                .contains("One tray or bag of each way")
                .contains("Way A: No mat of the group holds");
        assertThat(group.database().sql().fetchCount(TRIAL)).isZero();
    }

    @Test
    void declared_it_is_drawn_asked_for_and_named_on_labels_and_in_lists() {
        Answer sent = member.post("/trials", bagOrTray());
        assertThat(sent.status()).isEqualTo(303);
        Answer page = member.get(sent.location());

        assertThat(page.text())
                .contains("Trial 1: Tray or bag")
                .contains("Not sown yet; to be sown on Sat 6 Mar.")
                .contains("Drawn from the number");
        assertThat(member.get("/sowings").text()).contains("trial 1 way A").contains("trial 1 way B");
        assertThat(member.get("/labels?again=yes").text()).contains("Lantern Row · trial 1 way B");
        assertThat(member.get("/trials").text()).contains("not sown yet; 1 block of 1 member");
        assertThat(group.signedIn(group.coordinator()).get("/requests").text()).contains("trial 1 way A");
    }

    @Test
    void sent_twice_it_counts_once() {
        Map<String, String> once = bagOrTray();
        once.put("submission", "0123456789abcdef0123456789abcdef");
        member.post("/trials", once);
        member.post("/trials", once);

        assertThat(group.database().sql().fetchCount(TRIAL)).isEqualTo(1);
        assertThat(group.database().sql().fetchCount(SOWING)).isEqualTo(2);
    }

    @Test
    void a_fault_comes_back_with_everything_typed() {
        Map<String, String> typed = bagOrTray();
        typed.putAll(Map.of("seedsEach", "70", "kind", "warmth", "degreesA", "70", "degreesB", "80"));
        Answer again = member.post("/trials", typed);

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.text()).contains("Seeds of each way was 70. This lot has 120 seeds, and 140 are needed");
        assertThat(again.typed("degreesB")).isEqualTo("80");
        assertThat(again.typed("sowOn")).isEqualTo("2027-03-06");
        assertThat(group.database().sql().fetchCount(TRIAL)).isZero();
    }

    @Test
    void seed_of_somebody_else_cannot_be_tried_but_a_block_of_their_trial_carried() {
        Browser other = group.signedIn(group.onDuty());
        assertThat(other.post("/trials", bagOrTray()).text())
                .contains("The lot was Lantern Row of Tom, who has to be asked");
        assertThat(other.get("/seeds/" + lot).body()).doesNotContain("/trials/new");
        assertThat(member.get("/seeds/" + lot).body()).contains("/trials/new?lot=" + lot);

        String trial = member.post("/trials", bagOrTray()).location();
        assertThat(member.get(trial).text()).doesNotContain("Carry a block");
        assertThat(other.get(trial).text()).contains("Tom is asked for the seed.");
        assertThat(other.post(trial + "/blocks", Map.of("sowOn", "2027-02-20")).text())
                .contains("The day of sowing was 2027-02-20; a day from 2027-03-01");
        assertThat(other.post(trial + "/blocks", Map.of("sowOn", "2027-03-09")).status())
                .isEqualTo(303);
        assertThat(other.get(trial).text()).contains("Block 2 of Priya, Tue 9 Mar");

        Answer twice = other.post(trial + "/blocks", Map.of("sowOn", "2027-03-09"));
        assertThat(twice.status()).isEqualTo(422);
        assertThat(twice.text()).contains("You carry a block of trial 1 already");
    }

    @Test
    void withdrawn_altogether_it_is_called_off() {
        String trial = member.post("/trials", bagOrTray()).location();
        group.database()
                .sql()
                .select(SOWING.ID)
                .from(SOWING)
                .fetch(SOWING.ID)
                .forEach(sowing -> assertThat(member.post("/sowings/" + sowing + "/withdrawal")
                                .status())
                        .isEqualTo(303));

        assertThat(member.get(trial).text()).contains("Called off: all its sowings were withdrawn.");
    }

    @Test
    void strangers_see_nothing_and_an_unknown_trial_is_not_found() {
        assertThat(group.stranger().get("/trials").status()).isNotEqualTo(200);
        assertThat(member.get("/trials/" + new UUID(5, 5)).status()).isEqualTo(404);
        assertThat(member.post("/trials/" + new UUID(5, 5) + "/blocks", Map.of("sowOn", LocalDate.EPOCH.toString()))
                        .status())
                .isEqualTo(404);
    }
}
