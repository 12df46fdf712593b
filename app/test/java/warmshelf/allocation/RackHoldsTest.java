package warmshelf.allocation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** From where to where something may be taken while a rack is held. */
class RackHoldsTest {
    private static final UUID NORTH = UUID.randomUUID();
    private static final UUID SOUTH = UUID.randomUUID();
    private static final UUID NORTH_MAT = UUID.randomUUID();
    private static final UUID NORTH_LIGHT = UUID.randomUUID();
    private static final UUID SOUTH_LIGHT = UUID.randomUUID();
    private static final UUID APART = UUID.randomUUID();
    private static final RackHold HOLD = new RackHold(NORTH, "North", LocalDate.of(2027, 3, 1));
    private static final RackHolds HELD = new RackHolds(
            Map.of(NORTH, HOLD),
            Map.of(NORTH_MAT, NORTH, NORTH_LIGHT, NORTH, SOUTH_LIGHT, SOUTH, APART, SOUTH),
            Set.of(APART));

    @Test
    void nothing_leaves_a_held_rack_for_another() {
        assertThat(HELD.inTheWay(NORTH_MAT, SOUTH_LIGHT)).contains(new Obstacle.RackIsHeld(HOLD));
    }

    @Test
    void within_its_rack_and_to_a_quarantine_shelf_it_may_go() {
        assertThat(HELD.inTheWay(NORTH_MAT, NORTH_LIGHT)).isEmpty();
        assertThat(HELD.inTheWay(NORTH_MAT, APART)).isEmpty();
    }

    @Test
    void nothing_new_comes_to_a_held_rack_from_another_or_from_nowhere() {
        assertThat(HELD.inTheWay(SOUTH_LIGHT, NORTH_LIGHT)).contains(new Obstacle.RackTakesNothing(HOLD));
        assertThat(HELD.keepsOut(Set.of(), NORTH_MAT)).contains(HOLD);
    }

    @Test
    void what_lies_on_the_rack_already_is_not_new_to_it() {
        assertThat(HELD.keepsOut(Set.of(NORTH_MAT), NORTH_LIGHT)).isEmpty();
        assertThat(HELD.keepsOut(Set.of(SOUTH_LIGHT, NORTH_MAT), NORTH_LIGHT)).isEmpty();
    }

    @Test
    void a_rack_that_is_not_held_keeps_nothing() {
        assertThat(HELD.keepsOut(Set.of(), SOUTH_LIGHT)).isEmpty();
        assertThat(RackHolds.NONE.inTheWay(NORTH_MAT, SOUTH_LIGHT)).isEmpty();
    }
}
