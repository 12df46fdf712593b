package warmshelf.reminder;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.PUSH_ADDRESS;
import static warmshelf.db.generated.Tables.PUSH_NOTICE;

import java.net.http.HttpRequest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.loop.Cellar;
import warmshelf.reminder.push.PushKeys;
import warmshelf.reminder.push.PushReader;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class PushPagesTest {
    private static final PushKeys.Texts TEXTS = PushKeys.fresh();
    private static final PushReader DEVICE = PushReader.fresh();

    private final TestGroup group =
            TestGroup.withPush(PushKeys.of(TEXTS.publicKey(), TEXTS.privateKey(), "mailto:seeds@example.org")
                    .orElseThrow());
    private final Browser phone = group.signedIn(group.member());

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void without_keys_the_page_says_so_shows_no_button_and_takes_no_device() {
        try (TestGroup bare = TestGroup.open()) {
            Browser member = bare.signedIn(bare.member());
            Answer page = member.get("/reminders");

            assertThat(page.text()).contains("This installation sends no notices to phones: no push keys are set");
            assertThat(page.body()).doesNotContain("push-add", "push.js");
            assertThat(member.post("/reminders/devices", device("a")).status()).isEqualTo(409);
            assertThat(bare.database().sql().fetchCount(PUSH_ADDRESS)).isZero();
        }
    }

    @Test
    void a_page_holds_the_public_key_and_never_the_private_one() {
        assertThat(phone.get("/reminders").body())
                .contains("data-key=\"" + TEXTS.publicKey() + "\"")
                .doesNotContain(TEXTS.privateKey());
    }

    @Test
    void a_device_is_added_listed_tested_and_stopped() {
        assertThat(phone.post("/reminders/devices", device("a")).status()).isEqualTo(303);

        assertThat(phone.get("/reminders").text())
                .contains(
                        "This device gets notices from now on: Tom’s phone.",
                        "(this device)",
                        "Added Mon 1 Mar",
                        "no notice sent yet");
        String path = "/reminders/devices/" + id(phone);
        assertThat(phone.post(path + "/test").status()).isEqualTo(303);
        assertThat(group.database().sql().fetchSingle(PUSH_NOTICE).getTitle()).isEqualTo("Notices work on this device");
        assertThat(phone.post(path + "/removal").status()).isEqualTo(303);

        assertThat(phone.get("/reminders").text()).contains("Tom’s phone, since Mon 1 Mar: you stopped it");
        assertThat(phone.post(path + "/test").status()).isEqualTo(404);
        assertThat(phone.post(path + "/removal").status()).isEqualTo(404);
    }

    @Test
    void a_device_without_a_name_gets_a_plain_one() {
        Map<String, String> device = device("a");
        device.put("device", " ");
        phone.post("/reminders/devices", device);

        assertThat(phone.get("/reminders").text()).contains("Device of 1 Mar");
    }

    @Test
    void another_member_can_neither_test_nor_stop_it() {
        phone.post("/reminders/devices", device("a"));
        String path = "/reminders/devices/" + id(phone);
        Browser other = group.signedIn(group.onDuty());

        assertThat(other.get("/reminders").body()).doesNotContain(path);
        assertThat(other.post(path + "/test").status()).isEqualTo(404);
        assertThat(other.post(path + "/removal").status()).isEqualTo(404);
        assertThat(group.database().sql().fetchCount(PUSH_ADDRESS, PUSH_ADDRESS.ENDED_AT.isNull()))
                .isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "/wishes",
                "/00000000-0000-0000-0000-000000000001/removal",
                "/00000000-0000-0000-0000-000000000001/test"
            })
    void strangers_and_forms_without_their_token_are_turned_away(String path) {
        assertThat(group.stranger()
                        .postAsIs("/reminders/devices" + path, device("a"))
                        .status())
                .isEqualTo(401);
        assertThat(phone.postAsIs("/reminders/devices" + path, device("a")).status())
                .isEqualTo(403);
        assertThat(group.database().sql().fetchCount(PUSH_ADDRESS)).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "endpoint | '' | The device’s push address is empty; an https address at a public name",
                "endpoint | http://push.example.test/1 | The device’s push address does not begin with https://;",
                "endpoint | https://127.0.0.1/1 | The device’s push address does not name its server by a public name;",
                "endpoint | https://push.example.test:8080/1 | The device’s push address asks for port 8080, and only 443 is used;",
                "p256dh | '' | The device’s key cannot be used; 65 bytes in base64url",
                "p256dh | BAAA | The device’s key cannot be used;",
                "auth | '' | The device’s secret cannot be used; 16 bytes in base64url are accepted.",
                "auth | AAAA | The device’s secret cannot be used;",
                "device | 1234567890123456789012345678901234567890123456789012345678901 | The device’s name has 61 characters; at most 60 fit.",
            })
    void what_cannot_be_used_is_refused_with_its_sentence_and_nothing_is_kept(
            String field, String value, String sentence) {
        Map<String, String> device = device("a");
        device.put(field, value);

        Answer answer = phone.post("/reminders/devices", device);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.body()).as("what was typed").contains("value=\"" + device.get("device") + "\"");
        assertThat(group.database().sql().fetchCount(PUSH_ADDRESS)).isZero();
    }

    @Test
    void an_eleventh_device_is_refused_with_the_reason() {
        for (int i = 0; i < 10; i++) {
            assertThat(group.signedIn(group.member())
                            .post("/reminders/devices", device("n" + i))
                            .status())
                    .isEqualTo(303);
        }

        Answer answer = phone.post("/reminders/devices", device("a"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("You have 10 devices already, and no more fit; stop one of them first.");
    }

    @Test
    void tests_and_changes_are_slowed_down() {
        phone.post("/reminders/devices", device("a"));
        String path = "/reminders/devices/" + id(phone) + "/test";
        for (int i = 0; i < 5; i++) {
            assertThat(phone.post(path).status()).isEqualTo(303);
        }

        assertThat(phone.post(path).status()).isEqualTo(429);
    }

    @Test
    void what_is_wanted_is_kept_for_all_devices() {
        phone.post("/reminders/devices", device("a"));
        assertThat(phone.get("/reminders").body()).contains("name=\"pushMorning\" value=\"yes\" checked");

        assertThat(phone.post("/reminders/devices/wishes", Map.of("pushAlarms", "yes"))
                        .status())
                .isEqualTo(303);

        assertThat(phone.get("/reminders").body())
                .contains("name=\"pushAlarms\" value=\"yes\" checked", "name=\"pushMorning\" value=\"yes\"")
                .doesNotContain("name=\"pushMorning\" value=\"yes\" checked");
    }

    @Test
    void after_signing_out_on_the_phone_its_owner_sees_elsewhere_that_it_is_not_told() {
        phone.post("/reminders/devices", device("a"));
        phone.post("/sign-out");

        assertThat(group.signedIn(group.member()).get("/reminders").text())
                .contains("No longer getting notices", "Tom’s phone, since Mon 1 Mar: you were signed out there");
    }

    @Test
    void the_worker_tells_the_new_address_without_a_form() {
        phone.post("/reminders/devices", device("a"));

        Answer answer = moved(phone, json("https://push.example.test/b"));

        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body()).isEqualTo("{\"told\":true}");
        assertThat(group.database().sql().fetchSingle(PUSH_ADDRESS).getEndpoint())
                .isEqualTo("https://push.example.test/b");
    }

    @Test
    void a_new_address_that_cannot_be_used_or_is_of_no_device_changes_nothing() {
        phone.post("/reminders/devices", device("a"));
        Browser computer = group.signedIn(group.member());

        assertThat(moved(phone, json("https://10.0.0.1/b")).status()).isEqualTo(422);
        assertThat(moved(phone, "nonsense").status()).isEqualTo(422);
        assertThat(moved(phone, "[1]").status()).isEqualTo(422);
        assertThat(moved(computer, json("https://push.example.test/b")).body()).isEqualTo("{\"told\":false}");
        assertThat(moved(group.stranger(), json("https://push.example.test/b")).status())
                .isEqualTo(401);
        assertThat(phone.postAsIs("/reminders/devices/moved", device("b")).status())
                .as("a form")
                .isEqualTo(415);
        assertThat(phone.send(request(phone, json("https://push.example.test/b"))
                                .header("Sec-Fetch-Site", "cross-site"))
                        .status())
                .as("another site")
                .isEqualTo(403);
        assertThat(group.database().sql().fetch(PUSH_ADDRESS).getValues(PUSH_ADDRESS.ENDPOINT))
                .isEqualTo(List.of("https://push.example.test/a"));
    }

    private static Map<String, String> device(String name) {
        return new HashMap<>(Map.of(
                "endpoint",
                "https://push.example.test/" + name,
                "p256dh",
                DEVICE.p256dh(),
                "auth",
                DEVICE.auth(),
                "device",
                "Tom’s phone"));
    }

    private static String json(String endpoint) {
        return "{\"endpoint\":\"%s\",\"p256dh\":\"%s\",\"auth\":\"%s\"}"
                .formatted(endpoint, DEVICE.p256dh(), DEVICE.auth());
    }

    private static Answer moved(Browser browser, String json) {
        return browser.send(request(browser, json));
    }

    private static HttpRequest.Builder request(Browser browser, String json) {
        return browser.request("/reminders/devices/moved")
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(json));
    }

    private static String id(Browser browser) {
        return Cellar.first(browser.get("/reminders").body(), "/reminders/devices/([0-9a-f-]{36})/removal");
    }
}
