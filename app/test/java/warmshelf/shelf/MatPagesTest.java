package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

class MatPagesTest {
    // the test group reads Fahrenheit
    private static final Map<String, String> MAT = Map.of(
            "name", "M1", "walkOrder", "1", "places", "4", "low", "68", "high", "86", "usual", "79", "watts", "107");

    private TestGroup group;
    private Browser ilse;
    private ShelvingStore shelving;
    private ShelfCast cast;
    private UUID rack;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        ilse = group.signedIn(group.coordinator());
        shelving = new ShelvingStore(group.database().sql());
        cast = new ShelfCast(
                group.database(), group.audit(), group.coordinator().id());
        rack = cast.rack();
    }

    @AfterEach
    void close() {
        group.close();
    }

    @Test
    void a_shelf_and_a_mat_are_added_and_read_in_the_visitors_units() {
        Answer shelf = ilse.post(shelves(), Map.of("fromTop", "1", "litPlaces", "0", "lightWatts", "0"));
        Answer mat = ilse.post(mats(), MAT);

        assertThat(shelf.status()).isEqualTo(303);
        assertThat(mat.status()).isEqualTo(303);
        assertThat(ilse.get("/sites").text()).contains("M1 : 4 places, 68 °F to 86 °F, 107 W", "hot 79 °F");
        assertThat(onlyMat().usualC()).isEqualTo(26.1);
    }

    @Test
    void the_next_shelf_is_offered_below_the_last_one() {
        ilse.post(shelves(), Map.of("fromTop", "4", "litPlaces", "2", "lightWatts", "60"));

        assertThat(ilse.get(shelves() + "/new").typed("fromTop")).isEqualTo("5");
    }

    @Test
    void a_usual_set_point_outside_the_thermostat_is_refused_and_the_text_kept() {
        ilse.post(shelves(), Map.of("fromTop", "1"));

        Answer answer = ilse.post(mats(), changed(MAT, "usual", "95"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("Usual set-point was 95 °F; this thermostat goes from 68–86 °F.");
        assertThat(answer.typed("usual")).isEqualTo("95");
    }

    @Test
    void a_mat_cannot_lose_a_place_that_has_been_used() {
        ilse.post(shelves(), Map.of("fromTop", "1"));
        ilse.post(mats(), MAT);
        cast.stay(onlyMat().places().get(3).id(), 1, 4, TestGroup.TODAY, 10);
        String change = "/sites/mats/%s/change".formatted(onlyMat().id());

        Answer answer = ilse.post(change, changed(changed(MAT, "places", "3"), "version", "1"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("Places was 3");
        assertThat(answer.typed("places")).isEqualTo("3");
    }

    @Test
    void a_late_change_of_a_mat_or_shelf_shows_the_newer_state() {
        ilse.post(shelves(), Map.of("fromTop", "1"));
        ilse.post(mats(), MAT);
        String mat = "/sites/mats/%s/change".formatted(onlyMat().id());
        String shelf = "/sites/shelves/%s/change".formatted(onlyMat().shelfId());
        ilse.post(mat, changed(changed(MAT, "watts", "150"), "version", "1"));
        ilse.post(shelf, Map.of("fromTop", "2", "version", "1"));

        Answer lateMat = ilse.post(mat, changed(MAT, "version", "1"));
        Answer lateShelf = ilse.post(shelf, Map.of("fromTop", "3", "version", "1"));

        assertThat(lateMat.status()).isEqualTo(409);
        assertThat(lateMat.text()).contains("usually 79 °F, 150 W");
        assertThat(lateShelf.status()).isEqualTo(409);
        assertThat(lateShelf.text()).contains("level 2, 0 places under light");
    }

    @Test
    void a_change_without_its_version_is_refused() {
        ilse.post(shelves(), Map.of("fromTop", "1"));
        ilse.post(mats(), MAT);

        assertThat(ilse.post("/sites/mats/%s/change".formatted(onlyMat().id()), MAT)
                        .status())
                .isEqualTo(422);
    }

    @Test
    void a_site_with_too_many_watts_says_so() {
        ilse.post(shelves(), Map.of("fromTop", "1", "litPlaces", "2", "lightWatts", "1500"));

        assertThat(ilse.get("/sites").text()).contains("1,500 W together", "That is too much");
    }

    @Test
    void members_change_nothing() {
        Browser tom = group.signedIn(group.member());

        assertThat(tom.post(shelves(), Map.of("fromTop", "1")).status()).isEqualTo(403);
        assertThat(tom.get(shelves() + "/new").status()).isEqualTo(403);
        assertThat(shelving.all().get(0).racks().get(0).shelves()).isEmpty();
    }

    private String shelves() {
        return "/sites/racks/%s/shelves".formatted(rack);
    }

    private String mats() {
        return "/sites/shelves/%s/mats"
                .formatted(shelving.all().get(0).racks().get(0).shelves().get(0).id());
    }

    private Mat onlyMat() {
        return shelving.all().get(0).racks().get(0).shelves().get(0).mats().get(0);
    }

    private static Map<String, String> changed(Map<String, String> fields, String name, String value) {
        Map<String, String> all = new HashMap<>(fields);
        all.put(name, value);
        return all;
    }
}
