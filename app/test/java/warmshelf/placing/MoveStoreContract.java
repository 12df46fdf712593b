package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.STAY_MOVE;
import static warmshelf.testing.Decided.done;

import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.testing.Decided;

/** Moving what lies on a place, or will. */
abstract class MoveStoreContract extends MoveContract {
    @Test
    void a_stay_that_has_not_begun_lies_elsewhere_as_if_it_had_been_laid_there_at_first() {
        UUID id = lay(room.tomsPeppers(), room.m1Place1(), LEFT, 10, 20);

        UUID moved = move(id, spot(room.m1Place2(), RIGHT, 12, 20), 27, room.priya());

        assertThat(moved).isEqualTo(id);
        Stay stay = find(id).stay();
        assertThat(stay.placeId()).isEqualTo(room.m1Place2());
        assertThat(stay.slot()).isEqualTo(RIGHT);
        assertThat(stay.from()).isEqualTo(march(12));
        assertThat(stay.version()).isEqualTo(2);
        assertThat(find(id).celsius()).isEqualTo(27);
        assertThat(rows(id)).isEqualTo(2 * 8);
        assertThat(lay(room.priyasTomatoes(), room.m1Place1(), LEFT, 10, 12))
                .as("the old place is free")
                .isNotNull();
    }

    @Test
    void a_stay_may_be_shifted_over_its_own_days() {
        UUID id = lay(room.tomsPeppers(), room.m1Place1(), LEFT, 10, 20);

        move(id, spot(room.m1Place1(), LEFT, 11, 21), 25, room.priya());

        assertThat(find(id).stay().to()).isEqualTo(march(21));
        assertThat(find(id).celsius()).as("alone on its mat, it may turn it").isEqualTo(25);
        assertThat(rows(id)).isEqualTo(2 * 10);
    }

    @Test
    void of_several_moved_at_once_one_may_take_the_place_that_another_leaves_before_it() {
        UUID first = lay(room.tomsPeppers(), room.m1Place1(), LEFT, 10, 20);
        UUID second = lay(room.priyasTomatoes(), room.m1Place1(), RIGHT, 10, 20);
        MoveStore.Change away = change(second, spot(room.m1Place2(), LEFT, 10, 20));
        MoveStore.Change after = change(first, spot(room.m1Place1(), RIGHT, 10, 20));

        assertThatThrownBy(() -> done(moves.moveAll(List.of(after, away), TODAY, room.priya())))
                .isInstanceOf(Decided.NotDone.class);
        assertThat(find(second).stay().version()).as("all or none").isEqualTo(1);

        done(moves.moveAll(List.of(away, after), TODAY, room.priya()));

        assertThat(find(first).stay().slot()).isEqualTo(RIGHT);
        assertThat(find(second).stay().placeId()).isEqualTo(room.m1Place2());
    }

    @Test
    void a_taken_place_or_an_unfitting_warmth_is_refused_and_nothing_moves() {
        UUID id = lay(room.tomsPeppers(), room.m1Place1(), LEFT, 10, 20);
        lay(room.priyasTomatoes(), room.m1Place2(), LEFT, 15, 18);

        assertThatThrownBy(() -> move(id, spot(room.m1Place2(), LEFT, 10, 20), 26, room.priya()))
                .isInstanceOf(Decided.NotDone.class)
                .hasMessageContaining("Priya's Harbour Light (Tomato), Mon 15 Mar to Wed 17 Mar");
        assertThatThrownBy(() -> move(id, spot(room.m1Place2(), RIGHT, 10, 20), 25, room.priya()))
                .isInstanceOf(Decided.NotDone.class)
                .hasMessageContaining("Mat M1 stands at 26");
        assertThatThrownBy(() -> move(id, spot(room.m2Place1(), RIGHT, 10, 20), 26, room.priya()))
                .isInstanceOf(Decided.NotDone.class)
                .hasMessageContaining("Mat M2 can hold");
        assertThatThrownBy(() -> move(id, spot(room.lit1(), RIGHT, 10, 20), 26, room.priya()))
                .isInstanceOf(Decided.NotDone.class)
                .hasMessageContaining("moves to a mat");
        assertThat(find(id).stay().placeId()).isEqualTo(room.m1Place1());
        assertThat(find(id).stay().version()).isEqualTo(1);
        assertThat(rows(id)).isEqualTo(2 * 10);
        assertThat(database().sql().fetchCount(STAY_MOVE)).isZero();
    }

    @Test
    void what_lies_there_already_is_carried_and_keeps_its_first_day_in_history() {
        UUID sowing = room.tomsPeppers();
        UUID id = lay(sowing, room.m1Place1(), LEFT, 1, 12);
        sown(sowing);
        clock.advance(Duration.ofDays(4));

        UUID carried = done(moves.move(
                find(id),
                spot(room.m1Place2(), LEFT, 5, 12),
                at26(spot(room.m1Place2(), LEFT, 5, 12)),
                march(5),
                room.priya()));

        assertThat(carried).isNotEqualTo(id);
        assertThat(StayBookStore.ofSowing(database().sql(), sowing))
                .extracting(Stay::from, Stay::to, Stay::placeId)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(march(1), march(5), room.m1Place1()),
                        org.assertj.core.groups.Tuple.tuple(march(5), march(12), room.m1Place2()));
        assertThat(rows(id)).isEqualTo(2 * 4);
        assertThat(rows(carried)).isEqualTo(2 * 7);
        assertThat(moves.goesOnAs(id)).contains(carried);
    }

    @Test
    void what_has_ended_is_not_moved() {
        UUID id = lay(room.tomsPeppers(), room.m1Place1(), LEFT, 1, 4);

        assertThatThrownBy(() -> done(moves.move(
                        find(id),
                        spot(room.m1Place2(), LEFT, 5, 8),
                        at26(spot(room.m1Place2(), LEFT, 5, 8)),
                        march(4),
                        room.priya())))
                .isInstanceOf(Decided.NotDone.class)
                .hasMessage("This stay has ended; what has ended stays as it was.");
    }

    @Test
    void every_move_leaves_a_line_with_the_old_and_the_new() {
        UUID id = lay(room.tomsPeppers(), room.m1Place1(), LEFT, 10, 20);

        move(id, spot(room.m1Place2(), RIGHT, 12, 20), 27, room.priya());

        assertThat(database()
                        .sql()
                        .select(AUDIT_LINE.DETAIL)
                        .from(AUDIT_LINE)
                        .where(AUDIT_LINE.ACTION.eq("move stay"), AUDIT_LINE.MEMBER_ID.eq(room.priya()))
                        .fetch(AUDIT_LINE.DETAIL))
                .containsExactly("from Hall cellar · North rack · shelf 1 · mat M1 · place 1, left half,"
                        + " 2027-03-10 to before 2027-03-20 at 26 C to Hall cellar · North rack · shelf 1 · mat M1"
                        + " · place 2, right half, 2027-03-12 to before 2027-03-20 at 27 C");
    }
}
