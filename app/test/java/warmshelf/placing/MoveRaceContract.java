package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.testing.Decided.done;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.SpaceRefusal;
import warmshelf.testing.Decided;

/** Two who move at the same moment. */
abstract class MoveRaceContract extends MoveContract {
    @Test
    void of_two_who_move_two_stays_to_one_place_at_once_exactly_one_wins() throws Exception {
        for (int round = 0; round < 10; round++) {
            LyingStay one = find(lay(room.tomsPeppers(), room.m1Place1(), LEFT, 10, 12));
            LyingStay other = find(lay(room.tomsPeppers(), room.m1Place1(), RIGHT, 10, 12));
            PlaceAndDays wanted = spot(room.m1Place2(), LEFT, 10, 12);

            List<String> answers = atOnce(answer(one, wanted), answer(other, wanted));

            assertThat(answers).as("round " + round).containsExactlyInAnyOrder("moved", "clash");
            freeAll(one, other);
        }
    }

    @Test
    void of_two_who_move_one_stay_to_two_places_at_once_exactly_one_wins() throws Exception {
        for (int round = 0; round < 10; round++) {
            LyingStay stay = find(lay(room.tomsPeppers(), room.m1Place1(), LEFT, 10, 12));

            List<String> answers = atOnce(
                    answer(stay, spot(room.m1Place2(), LEFT, 10, 12)),
                    answer(stay, spot(room.m1Place2(), RIGHT, 10, 12)));

            assertThat(answers).as("round " + round).containsExactlyInAnyOrder("moved", "overtaken");
            freeAll(stay);
        }
    }

    @Test
    void two_who_swap_trays_between_two_mats_at_once_do_not_block_each_other() throws Exception {
        Band mild = new Band(20, 22);
        UUID onFirst = layMild(room.tomsPeppers(), room.m1Place1(), mild);
        UUID onSecond = layMild(room.priyasTomatoes(), room.m2Place1(), mild);
        for (int round = 0; round < 6; round++) {
            boolean even = round % 2 == 0;
            PlaceAndDays toSecond = spot(even ? room.m2Place1() : room.m1Place1(), even ? RIGHT : LEFT, 10, 12);
            PlaceAndDays toFirst = spot(even ? room.m1Place2() : room.m2Place1(), LEFT, 10, 12);

            List<String> answers = atOnce(answer(find(onFirst), toSecond, 21), answer(find(onSecond), toFirst, 21));

            assertThat(answers).as("round " + round).containsExactly("moved", "moved");
        }
    }

    /** The control: without a key and a version, both are let in, so the tests above can see it. */
    @Test
    void looking_first_and_then_writing_without_a_key_lets_both_in() throws Exception {
        database().sql().execute("create table unguarded (stay integer not null, spot integer not null)");
        database().sql().execute("insert into unguarded values (1, 1)");
        database().sql().execute("insert into unguarded values (2, 2)");
        CyclicBarrier bothHaveLooked = new CyclicBarrier(2);
        try {
            List<String> answers = atOnce(lookThenMove(1, bothHaveLooked), lookThenMove(2, bothHaveLooked));

            assertThat(answers).containsExactly("moved", "moved");
            assertThat(database().sql().fetchCount(DSL.table("unguarded"), DSL.condition("spot = 9")))
                    .isEqualTo(2);
        } finally {
            database().sql().execute("drop table unguarded");
        }
    }

    private Callable<String> lookThenMove(int stay, CyclicBarrier bothHaveLooked) {
        return () -> database().sql().transactionResult(tx -> {
            boolean free = tx.dsl().fetchCount(DSL.table("unguarded"), DSL.condition("spot = 9")) == 0;
            bothHaveLooked.await();
            if (free) {
                tx.dsl().execute("update unguarded set spot = 9 where stay = " + stay);
            }
            return free ? "moved" : "clash";
        });
    }

    private Callable<String> answer(LyingStay stay, PlaceAndDays spot) {
        return answer(stay, spot, 26);
    }

    private Callable<String> answer(LyingStay stay, PlaceAndDays spot, int celsius) {
        return () -> {
            try {
                done(moves.move(stay, spot, throughout(spot, celsius), TODAY, room.priya()));
                return "moved";
            } catch (Decided.NotDone told) {
                return told.reason() instanceof SpaceRefusal ? "clash" : "overtaken";
            }
        };
    }

    private static List<String> atOnce(Callable<String> one, Callable<String> other) throws Exception {
        CyclicBarrier start = new CyclicBarrier(2);
        ExecutorService people = Executors.newFixedThreadPool(2);
        try {
            List<Callable<String>> both = List.of(
                    () -> {
                        start.await();
                        return one.call();
                    },
                    () -> {
                        start.await();
                        return other.call();
                    });
            List<String> answers = new ArrayList<>();
            for (Future<String> answer : people.invokeAll(both)) {
                answers.add(answer.get());
            }
            return answers;
        } finally {
            people.shutdownNow();
        }
    }
}
