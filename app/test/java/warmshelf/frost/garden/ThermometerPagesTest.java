package warmshelf.frost.garden;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class ThermometerPagesTest {
    private static final String PAGE = "/frost/thermometers";

    private TestGroup group;
    private ThermometerStore thermometers;
    private Browser ilse;
    private Browser tom;
    private Browser priya;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        thermometers = new ThermometerStore(group.database(), group.audit());
        ilse = group.signedIn(group.coordinator());
        tom = group.signedIn(group.member());
        priya = group.signedIn(group.onDuty());
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void without_a_thermometer_the_list_says_so() {
        assertThat(tom.get(PAGE).text()).contains("None yet. Hang one up");
    }

    @Test
    void a_new_one_is_listed_with_what_is_known_of_it() {
        Answer added = add(tom, Map.of());

        assertThat(added.status()).isEqualTo(303);
        tom.post(added.location() + "/nights", Map.of("day", "2027-03-01", "temperature", "21.5"));
        assertThat(tom.get(PAGE).text())
                .contains("Behind the shed")
                .contains("mine")
                .contains("46.84° N, 92.22° W, 1,405 ft above the sea")
                .contains("21.5 °F, killing frost")
                .contains("1 Mar 2027");
    }

    @Test
    void the_page_for_a_new_one_says_how_to_hang_it_without_a_ladder() {
        assertThat(tom.get(PAGE + "/new").text())
                .contains("Five to six and a half feet above the ground")
                .contains("WMO-No. 8")
                .contains("without a ladder and without crossing ice");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "name | '' | The name is empty",
                "name | 1234567890123456789012345678901234567890123456789012345678901 | The name has 61 characters; at most 60 fit",
                "whose | hers | Whose it is was not chosen",
                "latitude | '' | Latitude is empty",
                "longitude | 200 | Longitude was '200'",
                "elevation | high | Elevation in feet was 'high'"
            })
    void one_that_cannot_be_is_refused_and_the_rest_is_kept(String field, String typed, String sentence) {
        Answer answer = add(tom, Map.of(field, typed));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains(sentence);
        assertThat(answer.typed("latitude")).isEqualTo(field.equals("latitude") ? typed : "46.84");
        assertThat(thermometers.allRecords()).isEmpty();
    }

    @Test
    void without_a_garden_point_the_place_is_asked_for_and_with_one_it_is_there_already() {
        Map<String, String> noPlace = Map.of("latitude", "", "longitude", "", "elevation", "");
        assertThat(add(tom, noPlace).status()).isEqualTo(422);

        GardenPoint point = new GardenPoint(46.9, -92.1, 400);
        new GardenStore(group.database(), group.audit())
                .setPoint(group.member().id(), point, 0, group.member().id());

        assertThat(tom.get(PAGE + "/new").typed("latitude")).isEqualTo("46.9");
        assertThat(add(tom, noPlace).status()).isEqualTo(303);
        assertThat(thermometers.allRecords().get(0).point()).isEqualTo(point);
    }

    @Test
    void only_coordinators_add_one_of_the_groups() {
        assertThat(tom.get(PAGE + "/new").text()).doesNotContain("every member sees it");
        assertThat(add(tom, Map.of("whose", "group")).status()).isEqualTo(403);
        assertThat(thermometers.allRecords()).isEmpty();
        assertThat(add(ilse, Map.of("whose", "group")).status()).isEqualTo(303);
        assertThat(thermometers.allRecords().get(0).memberId()).isNull();
    }

    @Test
    void a_private_one_is_there_for_its_owner_and_coordinators_only() {
        String address = add(tom, Map.of()).location();

        assertThat(tom.get(address).status()).isEqualTo(200);
        assertThat(ilse.get(address).text()).contains("Thermometer, Tom");
        assertThat(ilse.get(PAGE).text()).contains("Behind the shed");
        assertThat(priya.get(address).status()).isEqualTo(404);
        assertThat(priya.get(address + "/nights").status()).isEqualTo(404);
        assertThat(priya.get(PAGE).text()).doesNotContain("Behind the shed");
        for (String change : new String[] {"/nights", "/removed-nights", "/many-nights", "/retirement"}) {
            assertThat(priya.post(address + change, Map.of("day", "2027-03-01", "temperature", "20"))
                            .status())
                    .as(change)
                    .isEqualTo(404);
        }
    }

    @Test
    void the_groups_is_read_by_all_and_retired_by_coordinators() {
        String address = add(ilse, Map.of("whose", "group")).location();

        assertThat(priya.get(PAGE).text()).contains("Behind the shed", "the group’s");
        assertThat(priya.post(address + "/nights", Map.of("day", "2027-03-01", "temperature", "20"))
                        .status())
                .isEqualTo(303);
        assertThat(priya.get(address).text()).contains("20.0 °F").doesNotContain("Retire it");
        assertThat(priya.post(address + "/retirement").status()).isEqualTo(403);
        assertThat(ilse.post(address + "/retirement").status()).isEqualTo(303);
    }

    @Test
    void a_retired_one_keeps_its_nights_and_takes_no_more() {
        String address = add(tom, Map.of()).location();
        Map<String, String> night = Map.of("day", "2027-03-01", "temperature", "20");
        tom.post(address + "/nights", night);

        assertThat(tom.post(address + "/retirement").location()).isEqualTo(PAGE);
        assertThat(tom.get(PAGE).text()).contains("retired");
        assertThat(tom.get(address).text())
                .contains("20.0 °F", "It is no longer read")
                .doesNotContain("Lowest of last night");
        for (String change : new String[] {"/nights", "/removed-nights", "/many-nights"}) {
            assertThat(tom.post(address + change, night).status()).as(change).isEqualTo(409);
        }
        assertThat(tom.post(address + "/retirement").status()).isEqualTo(303);
        assertThat(thermometers.allRecords().get(0).minima().size()).isEqualTo(1);
    }

    @Test
    void what_is_no_thermometer_is_not_there() {
        assertThat(tom.get(PAGE + "/00000000-0000-0000-0000-000000000000").status())
                .isEqualTo(404);
        assertThat(tom.get(PAGE + "/nonsense").status()).isEqualTo(404);
    }

    @Test
    void no_form_without_its_token_does_anything() {
        String address = add(tom, Map.of()).location();

        for (String path : new String[] {
            PAGE, address + "/nights", address + "/removed-nights", address + "/many-nights", address + "/retirement"
        }) {
            assertThat(tom.postAsIs(path, Map.of("day", "2027-03-01", "temperature", "20"))
                            .status())
                    .as(path)
                    .isEqualTo(403);
        }
    }

    private static Answer add(Browser who, Map<String, String> fields) {
        Map<String, String> all = new HashMap<>(Map.of(
                "name", "Behind the shed",
                "whose", "mine",
                "latitude", "46.84",
                "longitude", "-92.22",
                "elevation", "1405"));
        all.putAll(fields);
        return who.post(PAGE, all);
    }
}
