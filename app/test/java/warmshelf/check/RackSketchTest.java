package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Slot;
import warmshelf.shelf.Lamp;

class RackSketchTest {
    private final List<PlaceAddress> places = new ArrayList<>();

    private UUID place(String rack, int shelf) {
        UUID id = UUID.randomUUID();
        places.add(new PlaceAddress(
                id,
                new UUID(1, 1),
                "Hall cellar",
                rack,
                shelf,
                null,
                "under the light",
                1,
                Lamp.NOT_KNOWN,
                places.size()));
        return id;
    }

    @Test
    void places_stand_on_their_shelves_in_walking_order_and_apart() {
        UUID first = place("North", 1);
        UUID second = place("North", 1);
        UUID below = place("North", 3);

        Map<UUID, RackSketch> sketches = RackSketch.byPlace(places);

        RackSketch north = Objects.requireNonNull(sketches.get(first));
        assertThat(north).isSameAs(sketches.get(second)).isSameAs(sketches.get(below));
        assertThat(north.shelves()).hasSize(3);
        RackSketch.Box one = north.mark(first, null).box();
        RackSketch.Box two = north.mark(second, null).box();
        assertThat(one.x() + one.width()).isLessThan(two.x());
        assertThat(one.y() + one.height()).isEqualTo(north.shelves().get(0).y());
        assertThat(north.mark(below, null).box().y()).isGreaterThan(two.y() + two.height());
    }

    @Test
    void each_rack_has_a_drawing_of_its_own_with_a_name_to_use_it_by() {
        UUID north = place("North", 1);
        UUID south = place("South", 1);

        Map<UUID, RackSketch> sketches = RackSketch.byPlace(places);

        RackSketch one = Objects.requireNonNull(sketches.get(north));
        RackSketch other = Objects.requireNonNull(sketches.get(south));
        assertThat(one.id()).isNotEqualTo(other.id());
        assertThat(other.name()).isEqualTo("South");
    }

    @Test
    void a_half_or_a_quarter_marks_its_part_of_the_place() {
        UUID place = place("North", 1);
        RackSketch north = Objects.requireNonNull(RackSketch.byPlace(places).get(place));
        RackSketch.Box whole = north.mark(place, new Slot(1, 4)).box();

        RackSketch.Box right = north.mark(place, new Slot(3, 2)).box();
        RackSketch.Box last = north.mark(place, new Slot(4, 1)).box();

        assertThat(right.x()).isEqualTo(whole.x() + whole.width() / 2);
        assertThat(right.x() + right.width()).isLessThanOrEqualTo(whole.x() + whole.width());
        assertThat(last.x()).isGreaterThan(right.x());
        assertThat(last.width()).isLessThan(right.width());
    }

    @Test
    void many_places_on_one_shelf_stay_within_the_drawing() {
        for (int at = 0; at < 12; at++) {
            place("North", 1);
        }

        Map<UUID, RackSketch> sketches = RackSketch.byPlace(places);

        assertThat(sketches.values().iterator().next().boxes()).hasSize(12).allSatisfy(box -> {
            assertThat(box.width()).isPositive();
            assertThat(box.x() + box.width()).isLessThanOrEqualTo(RackSketch.WIDTH);
        });
    }
}
