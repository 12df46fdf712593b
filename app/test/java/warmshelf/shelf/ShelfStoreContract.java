package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.testing.Decided.done;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;

/** Shelves and their places under light, kept and read again. */
abstract class ShelfStoreContract extends StoreContract {
    private ShelvingStore shelving;
    private ShelfStore shelves;
    private ShelfCast cast;

    @BeforeEach
    void prepare() {
        shelving = new ShelvingStore(database().sql());
        shelves = new ShelfStore(database().sql(), audit());
        cast = new ShelfCast(database(), audit());
    }

    @Test
    void a_level_of_a_rack_holds_one_shelf() {
        UUID rack = cast.rack();
        shelves.add(rack, new ShelfDraft(1, 0, 0), cast.ilse());

        assertThat(shelves.add(rack, new ShelfDraft(1, 2, 40), cast.ilse()).refusal())
                .contains(new ShelfRefusal.LevelTaken(1));
    }

    @Test
    void a_shelf_moved_to_a_level_that_is_taken_changes_places_with_the_one_there() {
        UUID rack = cast.rack();
        UUID top = done(shelves.add(rack, new ShelfDraft(1, 0, 0), cast.ilse()));
        UUID middle = done(shelves.add(rack, new ShelfDraft(2, 0, 0), cast.ilse()));
        UUID lowest = done(shelves.add(rack, new ShelfDraft(3, 0, 0), cast.ilse()));

        done(shelves.change(lowest, 1, new ShelfDraft(1, 0, 0), cast.ilse()));

        assertThat(shelving.rack(rack).orElseThrow().shelves())
                .extracting(Shelf::id)
                .containsExactly(lowest, middle, top);
        assertThat(shelves.change(top, 1, new ShelfDraft(2, 0, 0), cast.ilse()))
                .as("who saw it above")
                .isInstanceOf(Decision.Overtaken.class);
        assertThat(shelving.shelf(middle).orElseThrow().fromTop()).isEqualTo(2);
    }

    @Test
    void a_change_over_a_newer_one_is_not_made() {
        UUID shelf = done(shelves.add(cast.rack(), new ShelfDraft(1, 0, 0), cast.ilse()));

        assertThat(shelves.change(shelf, 9, new ShelfDraft(3, 0, 0), cast.ilse()))
                .isInstanceOf(Decision.Overtaken.class);
    }

    @Test
    void places_under_light_are_added_and_unused_ones_taken_away() {
        UUID shelf = done(shelves.add(cast.rack(), new ShelfDraft(1, 2, 40), cast.ilse()));

        shelves.change(shelf, 1, new ShelfDraft(1, 3, 40), cast.ilse());
        assertThat(shelving.shelf(shelf).orElseThrow().litPlaces())
                .extracting(Place::number)
                .containsExactly(1, 2, 3);
        shelves.change(shelf, 2, new ShelfDraft(1, 0, 0), cast.ilse());
        assertThat(shelving.shelf(shelf).orElseThrow().isLit()).isFalse();
    }

    @Test
    void a_place_that_a_tray_lies_or_lay_on_is_not_taken_away() {
        UUID shelf = done(shelves.add(cast.rack(), new ShelfDraft(1, 2, 40), cast.ilse()));
        cast.stay(shelving.shelf(shelf).orElseThrow().litPlaces().get(1).id(), 1, 4, TestGroup.TODAY, 14);

        Decision<UUID> dark = shelves.change(shelf, 1, new ShelfDraft(1, 1, 40), cast.ilse());

        assertThat(dark.refusal()).contains(new ShelfRefusal.LitPlacesUsed(1));
        assertThat(shelving.shelf(shelf).orElseThrow().litPlaces()).hasSize(2);
    }

    @Test
    void the_lamps_of_a_shelf_are_kept() {
        Lamp lamp = new Lamp(Lamp.Kind.FLUORESCENT, 16, true);
        UUID shelf = done(shelves.add(cast.rack(), new ShelfDraft(1, 2, 40, lamp), cast.ilse()));

        assertThat(new ShelvingStore(database().sql())
                        .shelf(shelf)
                        .orElseThrow()
                        .lamp())
                .isEqualTo(lamp);

        done(shelves.change(shelf, 1, new ShelfDraft(1, 2, 40), cast.ilse()));
        assertThat(new ShelvingStore(database().sql())
                        .shelf(shelf)
                        .orElseThrow()
                        .lamp())
                .isEqualTo(Lamp.NOT_KNOWN);
    }
}
