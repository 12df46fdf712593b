package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class SitePagesTest {
    private static final Map<String, String> CELLAR =
            Map.of("name", "Hall cellar", "walkOrder", "1", "amps", "15", "volts", "120", "note", "Key with Ilse");

    private TestGroup group;
    private Browser ilse;
    private ShelvingStore shelving;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        ilse = group.signedIn(group.coordinator());
        shelving = new ShelvingStore(group.database().sql());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void a_coordinator_adds_a_site_and_everyone_reads_it() {
        Answer added = ilse.post("/sites", CELLAR);
        Answer read = group.signedIn(group.member()).get("/sites");

        assertThat(added.status()).isEqualTo(303);
        assertThat(ilse.get(added.location()).text()).contains("Site Hall cellar is added.");
        assertThat(read.text()).contains("Hall cellar", "Key with Ilse", "at most 1,440 W", "licensed electrician");
        assertThat(read.body()).doesNotContain("/change", "/new");
    }

    @Test
    void an_empty_list_says_what_a_site_is() {
        assertThat(ilse.get("/sites").text()).contains("No sites yet", "Add the first site");
        assertThat(group.signedIn(group.member()).get("/sites").text()).contains("A coordinator adds them");
    }

    @Test
    void a_site_without_a_name_is_refused_and_what_was_typed_is_kept() {
        Answer answer = ilse.post("/sites", changed(CELLAR, "name", ""));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("Name of the site is empty");
        assertThat(answer.typed("amps")).isEqualTo("15");
        assertThat(shelving.all()).isEmpty();
    }

    @Test
    void a_second_site_of_the_same_name_is_refused_with_the_reason() {
        ilse.post("/sites", CELLAR);

        Answer answer = ilse.post("/sites", CELLAR);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("another site has that name");
    }

    @Test
    void a_change_over_a_newer_one_shows_the_newer_state_and_can_then_be_saved() {
        ilse.post("/sites", CELLAR);
        String address = "/sites/%s/change".formatted(siteId());
        assertThat(ilse.get(address).typed("version")).isEqualTo("1");
        ilse.post(address, changed(changed(CELLAR, "version", "1"), "name", "Cellar"));

        Answer late = ilse.post(address, changed(changed(CELLAR, "version", "1"), "amps", "20"));
        String newer = late.typed("version");

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("Someone else changed this", "Cellar, walking order 1, 15 A at 120 V");
        assertThat(late.typed("amps")).isEqualTo("20");
        assertThat(newer).isEqualTo("2");
        assertThat(ilse.post(address, changed(changed(CELLAR, "version", "2"), "amps", "20"))
                        .status())
                .isEqualTo(303);
        assertThat(shelving.all().get(0).circuit().amps()).isEqualTo(20);
    }

    @Test
    void a_rack_is_added_to_a_site_and_changed() {
        ilse.post("/sites", CELLAR);
        String racks = "/sites/%s/racks".formatted(siteId());

        assertThat(ilse.get(racks + "/new").typed("walkOrder")).isEqualTo("1");
        assertThat(ilse.post(racks, Map.of("name", "A", "walkOrder", "1")).status())
                .isEqualTo(303);
        assertThat(ilse.post(racks, Map.of("name", "A", "walkOrder", "2")).status())
                .isEqualTo(422);
        String change = "/sites/racks/%s/change"
                .formatted(shelving.all().get(0).racks().get(0).id());
        assertThat(ilse.get(change).typed("name")).isEqualTo("A");
        assertThat(ilse.post(change, Map.of("name", "North wall", "walkOrder", "3", "version", "1"))
                        .status())
                .isEqualTo(303);
        assertThat(ilse.get("/sites").text()).contains("Rack North wall");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/sites/new", "/sites/00000000-0000-4000-8000-000000000000/change"})
    void members_cannot_open_the_forms_and_strangers_are_sent_to_sign_in(String path) {
        assertThat(group.signedIn(group.member()).get(path).status()).isEqualTo(403);
        assertThat(group.stranger().get(path).status()).isIn(303, 401);
    }

    @Test
    void members_cannot_add_a_site() {
        assertThat(group.signedIn(group.member()).post("/sites", CELLAR).status())
                .isEqualTo(403);
        assertThat(shelving.all()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/sites/00000000-0000-4000-8000-000000000000/change",
                "/sites/racks/00000000-0000-4000-8000-000000000000/change",
                "/sites/racks/00000000-0000-4000-8000-000000000000/shelves/new",
                "/sites/shelves/00000000-0000-4000-8000-000000000000/mats/new",
                "/sites/mats/not-an-id/change"
            })
    void what_is_not_there_is_not_found(String path) {
        assertThat(ilse.get(path).status()).isEqualTo(404);
    }

    private UUID siteId() {
        return shelving.all().get(0).id();
    }

    private static Map<String, String> changed(Map<String, String> fields, String name, String value) {
        Map<String, String> all = new HashMap<>(fields);
        all.put(name, value);
        return all;
    }
}
