package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.GATHERED;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;

import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class GatheredPagesTest {
    private TestGroup group;
    private Browser member;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        member = group.signedIn(group.member());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void what_is_gathered_stands_on_ask_and_holds_nothing_until_it_is_sent() {
        gather(packet("pepper", "Lantern Row"));
        gather(packet("tomato", "Harbor Lamp"));

        assertThat(member.get("/ask").text())
                .contains("2 gathered, not sent yet", "Lantern Row", "Harbor Lamp", "Send all 2")
                .contains("Each is sent for itself");
        assertThat(count(SOWING) + count(LOT)).isZero();
        assertThat(group.signedIn(group.coordinator()).get("/ask").text()).doesNotContain("gathered");
    }

    @Test
    void all_are_sent_by_one_press_and_kept_once_when_pressed_twice() {
        gather(packet("pepper", "Lantern Row"));
        gather(packet("tomato", "Harbor Lamp"));
        List<String> shown = shown();

        Answer sent = sendAll(shown);
        Answer again = sendAll(shown);

        assertThat(sent.location()).isEqualTo("/sowings");
        assertThat(again.location()).isEqualTo("/sowings");
        assertThat(member.get("/sowings").text()).contains("Nothing was left to send");
        assertThat(count(SOWING)).isEqualTo(2);
        assertThat(count(SPACE_REQUEST)).isEqualTo(2);
        assertThat(count(GATHERED)).isZero();
    }

    @Test
    void one_that_cannot_be_sent_stays_with_its_sentence_while_the_others_are_sent() {
        String lot = lotOf(40);
        gather(ofLot(lot, "6"));
        gather(packet("tomato", "Harbor Lamp"));
        List<String> shown = shown();
        sql().update(LOT)
                .set(LOT.SEEDS_LEFT, 0)
                .where(LOT.ID.eq(UUID.fromString(lot)))
                .execute();

        assertThat(member.get("/ask").text()).contains("Send 1 of 2");
        Answer sent = sendAll(shown);

        assertThat(sent.location()).isEqualTo("/ask");
        assertThat(member.get("/ask").text())
                .contains("1 was sent. 1 could not be, and stays here with the reason.")
                .contains("1 gathered, not sent yet", "The lot you chose is not in the seed box any more")
                .doesNotContain("The variety is empty")
                .doesNotContain("Send it");
        assertThat(count(SOWING)).isEqualTo(1);
    }

    @Test
    void two_of_one_lot_are_judged_together_and_nothing_is_offered_that_would_be_refused() {
        String lot = lotOf(19);
        gather(ofLot(lot, "6"));
        gather(ofLot(lot, "6"));

        assertThat(member.get("/ask").text())
                .contains("Send 1 of 2")
                .contains("Those gathered before it use 10 seeds of this lot; 10 more are wanted, and 19 are free");
        sendAll(shown());

        assertThat(count(SOWING)).isEqualTo(1);
        assertThat(member.get("/ask").text())
                .contains("1 gathered, not sent yet")
                .contains("This lot has");
    }

    @Test
    void what_was_gathered_since_on_another_page_is_not_sent_unseen() {
        gather(packet("pepper", "Lantern Row"));
        List<String> shown = shown();
        gather(packet("tomato", "Harbor Lamp"));

        sendAll(shown);

        assertThat(member.get("/ask").text()).contains("1 gathered, not sent yet", "Harbor Lamp");
    }

    @Test
    void its_plan_opened_again_changes_it_or_sends_it_alone() {
        gather(packet("pepper", "Lantern Row"));
        Map<String, String> fewer = packet("pepper", "Lantern Row");
        fewer.put("plants", "4");
        fewer.put("gathered", shown().get(0));

        gather(fewer);
        assertThat(member.get("/ask").text()).contains("1 gathered, not sent yet", "4 plants");
        Answer plan = member.get(Cellar.first(member.get("/ask").body(), "href=\"(/ask/plan[^\"]+)\"")
                .replace("&amp;", "&"));
        assertThat(plan.status()).isEqualTo(200);
        Map<String, String> onward = Cellar.hiddenFields(plan.body(), "/sowings");
        assertThat(member.post("/sowings", onward).location()).startsWith("/sowings/");

        assertThat(count(GATHERED)).isZero();
        assertThat(count(SOWING)).isEqualTo(1);
    }

    @Test
    void sent_on_one_page_it_is_not_sent_once_more_on_another() {
        Map<String, String> asked = packet("pepper", "Lantern Row");
        gather(asked);
        List<String> shown = shown();
        sendAll(shown);
        asked.put("gathered", shown.get(0));

        for (String to : List.of("/sowings", "/ask/gathered")) {
            Answer late = member.post(to, asked);
            assertThat(late.status()).isEqualTo(422);
            assertThat(late.text()).contains("This was sent or taken out meanwhile");
            assertThat(late.typed("plants")).isEqualTo("10");
            assertThat(late.body()).doesNotContain("name=\"gathered\"");
        }
        assertThat(count(SOWING)).isEqualTo(1);
    }

    @Test
    void nothing_is_gathered_that_could_not_be_sent() {
        Map<String, String> none = packet("pepper", "Lantern Row");
        none.put("plants", "0");

        Answer refused = member.post("/ask/gathered", none);

        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains("Plants wanted was '0'; a whole number from 1 to 1,000 is accepted.");
        assertThat(refused.typed("variety")).isEqualTo("Lantern Row");
        assertThat(count(GATHERED)).isZero();
    }

    @Test
    void what_is_taken_out_can_be_taken_back_and_is_nobody_elses_to_take() {
        gather(packet("pepper", "Lantern Row"));
        String id = shown().get(0);
        Browser other = group.signedIn(group.coordinator());

        other.post("/ask/gathered/" + id + "/removal");
        assertThat(shown()).containsExactly(id);
        member.post("/ask/gathered/" + id + "/removal");
        Answer gone = member.get("/ask");
        assertThat(gone.text()).contains("Taken out.").doesNotContain("not sent yet");
        assertThat(gone.body()).contains("action=\"/ask/gathered/" + id + "/return\"");
        member.post("/ask/gathered/" + id + "/return");

        assertThat(shown()).containsExactly(id);
    }

    @Test
    void more_than_a_page_holds_are_not_gathered_and_the_plan_stays() {
        for (int i = 1; i <= GatheredStore.MOST; i++) {
            gather(packet("pepper", "Lantern " + i));
        }

        Answer refused = member.post("/ask/gathered", packet("pepper", "One more"));

        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains("12 are gathered, and that is all that can be sent at once");
        assertThat(refused.typed("variety")).isEqualTo("One more");
    }

    private void gather(Map<String, String> asked) {
        Answer answer = member.post("/ask/gathered", asked);
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo("/ask");
    }

    private List<String> shown() {
        return Cellar.all(member.get("/ask").body(), "type=\"hidden\" name=\"id\" value=\"([^\"]+)\"");
    }

    private Answer sendAll(List<String> shown) {
        String ids = String.join("&id=", shown);
        String token = URLEncoder.encode(String.valueOf(member.token()), StandardCharsets.UTF_8);
        return member.send(member.request("/ask/gathered/sending")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("csrf=" + token + "&id=" + ids)));
    }

    private static Map<String, String> packet(String crop, String variety) {
        Map<String, String> asked = Cellar.peppers();
        asked.putAll(Map.of("crop", crop, "variety", variety));
        return asked;
    }

    private String lotOf(int seeds) {
        Map<String, String> fields = new HashMap<>(Cellar.peppers());
        fields.put("packetSeeds", "400");
        member.post("/sowings", fields);
        String lot = sql().fetchSingle(LOT).getId().toString();
        sql().deleteFrom(SPACE_REQUEST).execute();
        sql().deleteFrom(SOWING).execute();
        sql().update(LOT).set(LOT.SEEDS_LEFT, seeds).execute();
        return lot;
    }

    private static Map<String, String> ofLot(String lot, String plants) {
        Map<String, String> asked = packet("pepper", "");
        asked.putAll(Map.of("lot", lot, "plants", plants));
        return asked;
    }

    private DSLContext sql() {
        return group.database().sql();
    }

    private int count(Table<?> table) {
        return sql().fetchCount(table);
    }
}
