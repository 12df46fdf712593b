package warmshelf.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class OwnSettingsPagesTest {
    private TestGroup group;
    private Browser tom;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        tom = group.signedIn(group.member());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void a_member_changes_name_postcode_and_units() {
        Answer answer = tom.post("/settings", settings("name", "Tomas Okafor"));
        Answer page = tom.get(answer.location());

        assertThat(answer.status()).isEqualTo(303);
        assertThat(page.text()).contains("Your settings are saved.");
        assertThat(page.typed("name")).isEqualTo("Tomas Okafor");
        assertThat(page.typed("postcode")).isEqualTo("55811");
        assertThat(page.body()).containsPattern("value=\"C\"[^>]*checked");
    }

    @Test
    void the_message_after_saving_appears_once() {
        Answer answer = tom.post("/settings", settings("name", "Tom Okafor"));

        assertThat(tom.get(answer.location()).text()).contains("Your settings are saved.");
        assertThat(tom.get(answer.location()).text()).doesNotContain("Your settings are saved.");
    }

    @Test
    void wrong_input_is_explained_and_kept() {
        Answer answer = tom.post("/settings", settings("length", "ells"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("Lengths in was 'ells'; accepted are: group, cm, in.");
        assertThat(answer.typed("postcode")).isEqualTo("55811");
    }

    @Test
    void a_name_that_somebody_has_is_refused() {
        Answer answer = tom.post("/settings", settings("name", "Priya NAIR"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("which somebody here has already");
    }

    @Test
    void settings_changed_on_another_device_meanwhile_are_not_overwritten() {
        tom.post("/settings", settings("name", "Tom on the phone"));

        Answer late = tom.post("/settings", settings("name", "Tom at the desk"));

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("changed meanwhile");
        assertThat(tom.get("/settings").typed("name")).isEqualTo("Tom on the phone");
    }

    @Test
    void a_new_passphrase_signs_other_devices_out_and_keeps_this_one() {
        Browser phone = group.signedIn(group.member());
        String tokenBefore = String.valueOf(tom.cookie("warmshelf"));

        Answer answer = tom.post(
                "/settings/passphrase",
                Map.of("current", group.member().passphrase(), "passphrase", "a lamp over lettuce"));

        assertThat(answer.status()).isEqualTo(303);
        assertThat(tom.get("/settings").status()).isEqualTo(200);
        assertThat(tom.cookie("warmshelf")).isNotEqualTo(tokenBefore);
        assertThat(phone.get("/settings").status()).isEqualTo(303);
    }

    @Test
    void a_passphrase_is_changed_only_by_who_knows_it() {
        Answer wrong = tom.post(
                "/settings/passphrase", Map.of("current", "not this one at all", "passphrase", "a lamp over lettuce"));
        Answer shorter = tom.post(
                "/settings/passphrase", Map.of("current", group.member().passphrase(), "passphrase", "lamp"));

        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.text()).contains("Passphrase now is not the one you sign in with.");
        assertThat(shorter.status()).isEqualTo(422);
        assertThat(shorter.text()).contains("New passphrase has 4 characters");
    }

    @Test
    void strangers_are_sent_to_sign_in() {
        assertThat(group.stranger().get("/settings").location()).isEqualTo("/sign-in?then=%2Fsettings");
        assertThat(group.stranger().post("/settings").status()).isEqualTo(401);
    }

    private static Map<String, String> settings(String field, String typed) {
        Map<String, String> fields = new HashMap<>(Map.of(
                "name", "Tom Okafor",
                "country", "US",
                "postcode", "55811",
                "temperature", "C",
                "length", "group",
                "version", "1"));
        fields.put(field, typed);
        return fields;
    }
}
