package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.testing.Decided.done;

import java.time.Duration;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.testing.Decided;
import warmshelf.words.Units;

/** Taking moves back, freeing places, and being told what somebody else changed. */
abstract class MoveBackContract extends MoveContract {
    @Test
    void what_was_carried_is_carried_back_by_undo() {
        UUID sowing = room.tomsPeppers();
        UUID id = lay(sowing, room.m1Place1(), LEFT, 1, 12);
        sown(sowing);
        UUID carried = done(moves.move(
                find(id),
                spot(room.m1Place2(), LEFT, 5, 12),
                at26(spot(room.m1Place2(), LEFT, 5, 12)),
                march(5),
                room.priya()));

        UUID back = done(moves.takeBack(find(carried), march(5), room.priya()));

        assertThat(back).isEqualTo(id);
        assertThat(StayBookStore.ofSowing(database().sql(), sowing))
                .extracting(Stay::id, Stay::to)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(id, march(12)));
        assertThat(rows(id)).isEqualTo(2 * 11);
        assertThat(rows(carried)).isZero();
    }

    @Test
    void the_second_of_two_coordinators_is_told_what_the_first_one_changed() {
        UUID id = lay(room.tomsPeppers(), room.m1Place1(), LEFT, 10, 20);
        LyingStay seenByBoth = find(id);
        done(moves.move(
                seenByBoth,
                spot(room.m1Place2(), LEFT, 12, 22),
                at26(spot(room.m1Place2(), LEFT, 12, 22)),
                TODAY,
                room.priya()));
        clock.advance(Duration.ofSeconds(70));

        assertThatThrownBy(() -> done(moves.move(
                        seenByBoth,
                        spot(room.m1Place1(), RIGHT, 10, 20),
                        at26(spot(room.m1Place1(), RIGHT, 10, 20)),
                        TODAY,
                        room.tom())))
                .isInstanceOf(Decided.TooLate.class)
                .hasMessage("Priya moved this to mat M1, place 2, left half, from 12 Mar, a minute ago.");
        assertThat(find(id).stay().placeId()).isEqualTo(room.m1Place2());
    }

    @Test
    void whoever_looked_before_it_was_ended_let_lie_longer_or_sown_is_told_so() {
        UUID ended = lay(room.tomsPeppers(), room.m1Place1(), LEFT, 10, 20);
        UUID sowing = room.tomsPeppers();
        UUID longer = lay(sowing, room.m1Place2(), LEFT, 10, 20);
        LyingStay seenEnded = find(ended);
        LyingStay seenLonger = find(longer);
        clock.advance(Duration.ofSeconds(1));
        database().sql().transaction(tx -> {
            stays.end(tx.dsl(), seenEnded.stay(), march(12), room.tom());
            stays.extend(tx.dsl(), seenLonger.stay(), march(22), room.tom());
        });
        LyingStay unsown = find(longer);
        sown(sowing);

        assertThatThrownBy(() -> done(moves.move(
                        seenEnded,
                        spot(room.m1Place1(), RIGHT, 10, 20),
                        at26(spot(room.m1Place1(), RIGHT, 10, 20)),
                        TODAY,
                        room.priya())))
                .hasMessage("Tom ended this stay, a moment ago.");
        assertThatThrownBy(() -> done(moves.move(
                        unsown,
                        spot(room.m1Place1(), RIGHT, 10, 20),
                        at26(spot(room.m1Place1(), RIGHT, 10, 20)),
                        TODAY,
                        room.priya())))
                .isInstanceOf(Decided.TooLate.class)
                .hasMessageContaining("An entry was made for this sowing");
        database().sql().update(SOWING).set(SOWING.STAGE, "planned").execute();
        assertThatThrownBy(() -> done(moves.move(
                        seenLonger,
                        spot(room.m1Place1(), RIGHT, 10, 20),
                        at26(spot(room.m1Place1(), RIGHT, 10, 20)),
                        TODAY,
                        room.priya())))
                .hasMessage("Tom let this lie longer, a moment ago.");
    }

    @Test
    void ones_own_last_move_is_taken_back_once_and_only_while_nothing_else_changed() {
        UUID id = lay(room.tomsPeppers(), room.m1Place1(), LEFT, 10, 20);
        move(id, spot(room.m1Place2(), LEFT, 12, 22), 27, room.priya());

        assertThat(moves.mayTakeBack(find(id), TODAY, room.priya())).isTrue();
        assertThat(moves.mayTakeBack(find(id), TODAY, room.tom()))
                .as("somebody else's move")
                .isFalse();
        assertThatThrownBy(() -> done(moves.takeBack(find(id), TODAY, room.tom())))
                .isInstanceOf(Decided.TooLate.class);

        done(moves.takeBack(find(id), TODAY, room.priya()));

        assertThat(find(id).stay())
                .extracting(Stay::placeId, Stay::from, Stay::to)
                .containsExactly(room.m1Place1(), march(10), march(20));
        assertThat(find(id).celsius()).isEqualTo(26);
        assertThatThrownBy(() -> done(moves.takeBack(find(id), TODAY, room.priya())))
                .isInstanceOf(Decided.TooLate.class);
    }

    @Test
    void a_move_is_not_taken_back_over_somebody_elses_change_or_tray() {
        UUID id = lay(room.tomsPeppers(), room.m1Place1(), LEFT, 10, 20);
        move(id, spot(room.m1Place2(), LEFT, 10, 20), 26, room.priya());
        lay(room.priyasTomatoes(), room.m1Place1(), LEFT, 10, 20);

        assertThatThrownBy(() -> done(moves.takeBack(find(id), TODAY, room.priya())))
                .isInstanceOf(Decided.NotDone.class)
                .hasMessageContaining("is taken by Priya's Harbour Light");

        database().sql().transaction(tx -> stays.extend(tx.dsl(), find(id).stay(), march(21), room.tom()));
        assertThatThrownBy(() -> done(moves.takeBack(find(id), TODAY, room.priya())))
                .isInstanceOf(Decided.TooLate.class);
        assertThat(find(id).stay().placeId()).isEqualTo(room.m1Place2());
    }

    @Test
    void a_freed_place_is_free_and_the_request_waits_again_with_the_reason() {
        UUID sowing = room.tomsPeppers();
        UUID id = lay(sowing, room.m1Place1(), LEFT, 10, 20);
        database()
                .sql()
                .transaction(tx -> requests.add(
                        tx.dsl(),
                        new SpaceRequest(
                                sowing,
                                SpaceRequest.State.PLACED,
                                march(5),
                                march(10),
                                march(20),
                                10,
                                2,
                                WARM,
                                false,
                                "",
                                1)));

        done(moves.free(find(id), "The mat is broken.", TODAY, room.priya()));

        assertThat(rows(id)).isZero();
        assertThat(lying.find(id)).isEmpty();
        assertThat(moves.whatChanged(id, 1).words(Units.METRIC)).isEqualTo("Priya ended this stay, a moment ago.");
        SpaceRequest request = requests.find(sowing).orElseThrow();
        assertThat(request.isWaiting()).isTrue();
        assertThat(request.reason()).isEqualTo("The mat is broken.");
    }
}
