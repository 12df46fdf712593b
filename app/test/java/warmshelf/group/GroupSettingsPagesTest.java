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

class GroupSettingsPagesTest {
    private TestGroup group;
    private Browser ilse;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        ilse = group.signedIn(group.coordinator());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void a_coordinator_renames_the_group_for_everyone() {
        Answer answer = ilse.post("/settings/group", profile("1", "groupName", "Lakeside Seed Starters"));

        assertThat(answer.status()).isEqualTo(303);
        assertThat(group.stranger().get("/sign-in").text()).contains("Lakeside Seed Starters");
    }

    @Test
    void wrong_input_is_explained_and_kept() {
        Answer answer = ilse.post("/settings/group", profile("1", "groupZone", "Duluth"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("Time zone was 'Duluth'; one such as America/Chicago is accepted.");
        assertThat(answer.typed("groupName")).isEqualTo(TestGroup.NAME);
    }

    @Test
    void a_change_made_meanwhile_is_shown_beside_what_was_typed_and_nothing_is_lost() {
        ilse.post("/settings/group", profile("1", "groupPostcode", "55802"));

        Answer late = ilse.post("/settings/group", profile("1", "groupPostcode", "55812"));
        Answer again =
                ilse.post("/settings/group", profile(String.valueOf(late.typed("version")), "groupPostcode", "55812"));

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("Group’s postcode is now '55802'; you typed '55812'.");
        assertThat(late.typed("groupPostcode")).isEqualTo("55812");
        assertThat(again.status()).isEqualTo(303);
        assertThat(ilse.get("/settings/group").typed("groupPostcode")).isEqualTo("55812");
    }

    @Test
    void members_and_strangers_may_not() {
        Browser tom = group.signedIn(group.member());

        assertThat(tom.get("/settings/group").status()).isEqualTo(403);
        assertThat(tom.post("/settings/group", profile("1", "groupName", "Mine"))
                        .status())
                .isEqualTo(403);
        assertThat(group.stranger().get("/settings/group").status()).isEqualTo(303);
    }

    private static Map<String, String> profile(String version, String field, String typed) {
        Map<String, String> profile = new HashMap<>(Map.of(
                "groupName", TestGroup.NAME,
                "groupZone", "America/Chicago",
                "groupTemperature", "F",
                "groupLength", "in",
                "groupCountry", "US",
                "groupPostcode", "55806",
                "groupSeason", "2027",
                "version", version));
        profile.put(field, typed);
        return profile;
    }
}
