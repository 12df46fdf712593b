package warmshelf.passkey;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.PASSKEY;

import java.net.http.HttpRequest;
import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.group.MemberStore;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** Adding a passkey and signing in by it, with a device written by the standard's words, which can also do it wrong. */
class PasskeyPagesTest {
    private static final String HERE = "http://localhost:7070";
    private static final Pattern CHALLENGE = Pattern.compile("challenge(?:\"|&quot;):(?:\"|&quot;)([A-Za-z0-9_-]{43})");
    private static final String NO = "This device did not sign you in";

    private TestGroup group;
    private Browser tom;
    private SoftKey phone;

    @BeforeEach
    void open() {
        group = TestGroup.at(HERE);
        tom = group.signedIn(group.member());
        phone = new SoftKey("localhost", HERE);
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void a_phone_that_was_added_signs_its_member_in_without_a_name_and_goes_where_they_wanted() {
        add(phone);
        assertThat(tom.get("/settings/passkeys").text()).contains("‘my phone’ now signs you in.", "not used yet");
        Browser stranger = group.stranger();

        Answer in = signIn(stranger, phone.signed(question(stranger)), "?then=%2Fracks");

        assertThat(in.status()).isEqualTo(200);
        assertThat(in.body()).isEqualTo("{\"then\":\"/racks\"}");
        assertThat(stranger.get("/settings").text()).contains("Tom Okafor");
        assertThat(tom.get("/settings/passkeys").text()).contains("last used 1 Mar 2027");
        assertThat(signIn(group.stranger(), phone.signed(question(stranger)), "?then=//evil.example")
                        .body())
                .isEqualTo("{\"then\":\"/\"}");
    }

    @Test
    void an_answer_counts_once_and_for_five_minutes() {
        add(phone);
        String answer = phone.signed(question(group.stranger()));

        assertThat(signIn(group.stranger(), answer, "").status()).isEqualTo(200);
        refused(answer);
        String late = phone.signed(question(group.stranger()));
        group.clock().advance(Duration.ofMinutes(6));
        refused(late);
        refused(phone.signed("x".repeat(43)));
    }

    @Test
    void a_key_that_is_not_known_a_wrong_origin_and_a_holder_who_was_not_made_sure_of_get_the_same_no() {
        add(phone);

        refused(new SoftKey("localhost", HERE).signed(question(group.stranger())));
        phone.origin = "https://elsewhere.example";
        refused(phone.signed(question(group.stranger())));
        phone.origin = HERE;
        phone.verifies = false;
        refused(phone.signed(question(group.stranger())));
        phone.verifies = true;
        refused("{}");
        refused("nonsense");
        refused("{\"id\":\"" + phone.id() + "\",\"response\":{\"clientDataJSON\":\"!\"}}");
        assertThat(signIn(group.stranger(), phone.signed(question(group.stranger())), "")
                        .status())
                .isEqualTo(200);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "\"signature\":\"|\"signature\":\"!!",
                "\"signature\"|\"other\"",
                "\"authenticatorData\":\"|\"authenticatorData\":\"AA",
                "\"authenticatorData\"|\"other\"",
                "\"authenticatorData\":\"|\"authenticatorData\":7,\"other\":\"",
                "\"rawId\":\"|\"rawId\":\"!",
                "\"clientExtensionResults\":{}|\"clientExtensionResults\":7",
                "\"response\":{|\"response\":{\"userHandle\":\"!\","
            })
    void what_a_device_would_never_send_is_refused_and_breaks_nothing(String right, String wrong) {
        add(phone);
        String answer = phone.signed(question(group.stranger()));

        assertThat(answer).contains(right);
        refused(answer.replace(right, wrong));
        String made = new SoftKey("localhost", HERE).made(asked(tom));
        assertThat(answer(tom, made.replace("\"attestationObject\":\"", "\"attestationObject\":\"AA"))
                        .status())
                .isEqualTo(422);
    }

    @Test
    void a_count_that_goes_backwards_is_refused_as_a_copy_would_do_so() {
        phone.count = 5;
        add(phone);
        phone.count = 9;
        assertThat(signIn(group.stranger(), phone.signed(question(group.stranger())), "")
                        .status())
                .isEqualTo(200);
        phone.count = 7;
        refused(phone.signed(question(group.stranger())));
        phone.count = 9;
        refused(phone.signed(question(group.stranger())));
    }

    @Test
    void one_that_was_ended_or_whose_member_has_left_signs_nobody_in() {
        add(phone);
        Browser elsewhere = group.stranger();
        signIn(elsewhere, phone.signed(question(elsewhere)), "");
        Matcher id = Pattern.compile("/settings/passkeys/([0-9a-f-]{36})/end")
                .matcher(tom.get("/settings/passkeys").body());
        assertThat(id.find()).isTrue();

        assertThat(group.signedIn(group.onDuty()).post(id.group()).status()).isEqualTo(404);
        assertThat(tom.post(id.group()).location()).isEqualTo("/settings/passkeys");

        assertThat(tom.get("/settings/passkeys").text())
                .contains("signs you in no more")
                .doesNotContain("Your passkeys");
        assertThat(elsewhere.get("/settings").location()).startsWith("/sign-in");
        refused(phone.signed(question(group.stranger())));
        SoftKey another = new SoftKey("localhost", HERE);
        add(another);
        new MemberStore(group.database(), group.audit())
                .leave(
                        group.database().sql(),
                        group.member().id(),
                        group.coordinator().id());
        refused(another.signed(question(group.stranger())));
    }

    @Test
    void to_add_one_takes_the_passphrase_a_name_and_a_true_answer_to_ones_own_question() {
        Answer wrong = tom.post("/settings/passkeys/question", Map.of("name", "", "passphrase", "three cold trays"));
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.text()).contains("Name is empty");
        Answer notHis =
                tom.post("/settings/passkeys/question", Map.of("name", "mine", "passphrase", "three cold trays"));
        assertThat(notHis.text()).contains("Passphrase is not the one you sign in with.");
        phone.origin = "https://elsewhere.example";
        assertThat(answer(tom, phone.made(asked(tom))).status()).isEqualTo(422);
        phone.origin = HERE;
        phone.verifies = false;
        assertThat(answer(tom, phone.made(asked(tom))).status()).isEqualTo(422);
        phone.verifies = true;
        Browser priya = group.signedIn(group.onDuty());
        assertThat(answer(priya, phone.made(asked(tom))).status()).isEqualTo(422);
        assertThat(answer(tom, phone.made(question(group.stranger()))).status()).isEqualTo(422);
        assertThat(group.database().sql().fetchCount(PASSKEY)).isZero();
    }

    @Test
    void the_sign_in_page_offers_it_and_the_passphrase_stays() {
        assertThat(group.stranger().get("/sign-in").body()).contains("id=\"passkey-in\"", "name=\"passphrase\"");
        try (TestGroup nowhere = TestGroup.open()) {
            assertThat(nowhere.stranger().get("/sign-in").body()).doesNotContain("passkey");
            Browser member = nowhere.signedIn(nowhere.member());
            assertThat(member.get("/settings/passkeys").text())
                    .contains("because this installation has no https address");
            assertThat(member.post("/settings/passkeys/question", Map.of("name", "a", "passphrase", "b"))
                            .status())
                    .isEqualTo(409);
            assertThat(post(nowhere.stranger(), "/sign-in/passkey/question", "{}")
                            .status())
                    .isEqualTo(409);
        }
    }

    @Test
    void who_tries_too_often_has_to_wait() {
        for (int i = 0; i < 40; i++) {
            assertThat(signIn(group.stranger(), "{}", "").status()).isEqualTo(422);
        }
        assertThat(signIn(group.stranger(), "{}", "").status()).isEqualTo(429);
    }

    private void add(SoftKey key) {
        Answer added = answer(tom, key.made(asked(tom)));
        assertThat(added.status()).as(added.text()).isEqualTo(200);
        assertThat(added.body()).isEqualTo("{\"then\":\"/settings/passkeys\"}");
    }

    private String asked(Browser browser) {
        Answer page = browser.post(
                "/settings/passkeys/question",
                Map.of("name", "my phone", "passphrase", group.member().passphrase()));
        return challenge(page);
    }

    private static String question(Browser browser) {
        return challenge(post(browser, "/sign-in/passkey/question", "{}"));
    }

    private static String challenge(Answer answer) {
        Matcher challenge = CHALLENGE.matcher(answer.body());
        assertThat(challenge.find()).as(answer.body()).isTrue();
        return challenge.group(1);
    }

    private void refused(String answer) {
        Answer no = signIn(group.stranger(), answer, "");
        assertThat(no.status()).isEqualTo(422);
        assertThat(no.body()).contains(NO);
    }

    private static Answer answer(Browser browser, String body) {
        return post(browser, "/settings/passkeys/answer", body);
    }

    private static Answer signIn(Browser browser, String body, String query) {
        return post(browser, "/sign-in/passkey" + query, body);
    }

    private static Answer post(Browser browser, String path, String body) {
        return browser.send(browser.request(path)
                .header("Content-Type", "application/json")
                .header("Accept", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }
}
