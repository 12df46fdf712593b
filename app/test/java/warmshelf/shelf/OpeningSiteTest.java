package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Boards of many places open at one site: 12 racks of 8 places are 96. */
class OpeningSiteTest {
    private static final Site CELLAR = DrawnCellar.sites().get(0);
    private static final Site GREENHOUSE = new Site(
            UUID.randomUUID(), "Greenhouse", 2, CELLAR.circuit(), "", 1, Collections.nCopies(12, emptyOfPlants()));
    private static final Board BOARD =
            DrawnCellar.board(DrawnCellar.stay(1, 1, 4, DrawnCellar.DAY, DrawnCellar.DAY.plusDays(5)));

    /** The cellar's rack, on whose places nothing lies. */
    private static Rack emptyOfPlants() {
        List<Place> places = new ArrayList<>();
        for (int number = 1; number <= 8; number++) {
            places.add(new Place(UUID.randomUUID(), number));
        }
        Shelf lit = new Shelf(UUID.randomUUID(), UUID.randomUUID(), 1, 160, Lamp.NOT_KNOWN, 1, List.of(), places);
        return new Rack(UUID.randomUUID(), UUID.randomUUID(), "B", 1, 1, List.of(lit));
    }

    @Test
    void few_places_are_shown_together() {
        assertThat(OpeningSite.of(List.of(CELLAR), BOARD, "Ilse")).isNull();
        Site small = new Site(UUID.randomUUID(), "Porch", 3, CELLAR.circuit(), "", 1, List.of(emptyOfPlants()));
        assertThat(OpeningSite.of(List.of(small, CELLAR), BOARD, "Ilse")).isNull();
    }

    @Test
    void of_many_the_site_comes_first_at_which_something_of_the_readers_lies() {
        assertThat(OpeningSite.of(List.of(GREENHOUSE, CELLAR), BOARD, "Ilse")).isEqualTo(CELLAR.id());
    }

    @Test
    void who_has_nothing_lying_sees_the_first_site() {
        assertThat(OpeningSite.of(List.of(GREENHOUSE, CELLAR), BOARD, "Tom")).isEqualTo(GREENHOUSE.id());
    }

    @Test
    void one_site_is_shown_whole_however_large() {
        assertThat(OpeningSite.of(List.of(GREENHOUSE), BOARD, "Ilse")).isNull();
    }
}
