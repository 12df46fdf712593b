package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** A rack with its shelves, mats and lights, described in one form. */
class NewRackPagesTest {
    private static final Map<String, String> MATS =
            Map.of("places", "2", "watts", "45", "low", "68", "high", "95", "usual", "79");

    private TestGroup group;
    private Browser ilse;
    private ShelvingStore shelving;
    private String racks;

    @BeforeEach
    void open() {
        group = TestGroup.open();
        ilse = group.signedIn(group.coordinator());
        shelving = new ShelvingStore(group.database().sql());
        ilse.post("/sites", Map.of("name", "Hall cellar", "walkOrder", "1", "amps", "15", "volts", "120"));
        racks = "/sites/" + shelving.all().get(0).id() + "/racks";
    }

    @AfterEach
    void close() {
        group.close();
    }

    private static Map<String, String> north() {
        Map<String, String> typed = new HashMap<>(MATS);
        typed.putAll(Map.of("name", "North", "walkOrder", "1", "litPlaces", "4", "lightWatts", "80"));
        typed.putAll(Map.of("shelf-1", "light", "shelf-2", "mats-2", "shelf-3", "mats-1", "shelf-4", "nothing"));
        return typed;
    }

    private List<Rack> racks() {
        return shelving.all().get(0).racks();
    }

    @Test
    void one_form_makes_the_rack_with_all_that_is_on_it() {
        Answer added = ilse.post(racks, north());

        assertThat(added.status()).as(added.text()).isEqualTo(303);
        assertThat(added.location()).isEqualTo("/sites");
        List<Shelf> shelves = racks().get(0).shelves();
        assertThat(shelves).extracting(Shelf::fromTop).containsExactly(1, 2, 3, 4);
        assertThat(shelves.get(0).litPlaces()).hasSize(4);
        assertThat(shelves.get(1).mats()).extracting(Mat::name).containsExactly("M1", "M2");
        assertThat(shelves.get(2).mats()).singleElement().satisfies(mat -> {
            assertThat(mat.name()).isEqualTo("M3");
            assertThat(mat.places()).hasSize(2);
            assertThat(mat.watts()).isEqualTo(45);
            assertThat(mat.lowC()).isEqualTo(20);
        });
        assertThat(shelves.get(3).mats()).isEmpty();
        assertThat(shelves.get(3).isLit()).isFalse();
    }

    @Test
    void another_like_it_asks_for_a_name_alone_and_counts_the_mats_on() {
        Map<String, String> typed = north();
        typed.put("then", "another");
        Answer next = ilse.get(ilse.post(racks, typed).location());
        assertThat(next.text()).contains("Rack North is added.");
        assertThat(next.body()).contains("<option value=\"mats-2\" selected>", "<option value=\"light\" selected>");
        assertThat(next.typed("watts")).isEqualTo("45");
        Map<String, String> south = north();
        south.put("name", "South");

        assertThat(ilse.post(racks, south).status()).isEqualTo(303);

        assertThat(racks().get(1).shelves().get(1).mats()).extracting(Mat::name).containsExactly("M4", "M5");
    }

    @Test
    void of_a_rack_alone_nothing_else_is_asked() {
        assertThat(ilse.post(racks, Map.of("name", "Bare", "walkOrder", "1")).status())
                .isEqualTo(303);
        assertThat(racks().get(0).shelves()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "watts, '', Watts",
        "places, 13, 12",
        "usual, 99, 68",
        "lightWatts, none, none",
        "shelf-2, mats-9, mats-9",
        "name, '', Name of the rack"
    })
    void a_fault_comes_back_beside_its_field_with_all_that_was_typed(String field, String given, String said) {
        Map<String, String> typed = north();
        typed.put(field, given);

        Answer answer = ilse.post(racks, typed);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("Please look at this again", said);
        assertThat(answer.body()).contains("<option value=\"mats-1\" selected>");
        assertThat(racks()).isEmpty();
    }

    @Test
    void a_second_rack_of_a_name_is_refused_whole() {
        ilse.post(racks, north());

        Answer again = ilse.post(racks, north());

        assertThat(again.status()).isEqualTo(422);
        assertThat(racks()).hasSize(1);
        assertThat(shelving.all().get(0).racks().get(0).shelves()).hasSize(4);
    }
}
