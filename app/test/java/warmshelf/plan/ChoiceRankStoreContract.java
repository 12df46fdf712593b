package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.testing.Decided.done;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.SpaceRequest;
import warmshelf.decision.Decision;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

abstract class ChoiceRankStoreContract extends StoreContract {
    private GrowRoom room;
    private ChoiceRankStore ranks;
    private RequestStore requests;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        ranks = new ChoiceRankStore(database(), audit());
        requests = new RequestStore(database(), audit());
    }

    @Test
    void requests_rank_in_the_order_of_asking_each_member_for_themselves() {
        UUID first = asked(room.tomsPeppers());
        UUID second = asked(room.tomsBag());
        UUID priyas = asked(room.priyasTomatoes());

        assertThat(ranks.choices()).isEqualTo(Map.of(first, 1, second, 2, priyas, 1));
    }

    @Test
    void what_is_put_first_stays_first_and_the_others_keep_their_order() {
        UUID first = asked(room.tomsPeppers());
        UUID second = asked(room.tomsBag());
        UUID third = asked(room.tomsPeppers());

        assertThat(done(ranks.putFirst(third, room.tom()))).isEqualTo(third);
        UUID later = asked(room.tomsPeppers());

        assertThat(ranks.choices()).isEqualTo(Map.of(third, 1, first, 2, second, 3, later, 4));
    }

    @Test
    void a_request_that_is_refused_leaves_its_rank_to_the_next() {
        UUID first = asked(room.tomsPeppers());
        UUID second = asked(room.tomsBag());
        database()
                .sql()
                .transaction(tx -> requests.decide(
                        tx.dsl(),
                        requests.find(first).orElseThrow(),
                        SpaceRequest.State.REFUSED,
                        "Full.",
                        room.priya()));

        assertThat(ranks.choices()).isEqualTo(Map.of(second, 1));
        assertThat(ranks.putFirst(first, room.tom()).refusal()).contains(new PlanRefusal.NotYoursToPutFirst());
    }

    @Test
    void nobody_ranks_the_request_of_somebody_else() {
        UUID toms = asked(room.tomsPeppers());

        assertThat(ranks.putFirst(toms, room.priya()).refusal()).contains(new PlanRefusal.NotYoursToPutFirst());
        assertThat(ranks.putFirst(UUID.randomUUID(), room.tom()).refusal())
                .contains(new PlanRefusal.NotYoursToPutFirst());
    }

    @Test
    void two_presses_at_once_leave_each_rank_once() throws Exception {
        UUID first = asked(room.tomsPeppers());
        UUID second = asked(room.tomsBag());
        ExecutorService both = Executors.newFixedThreadPool(2);
        try {
            for (int round = 0; round < 15; round++) {
                CyclicBarrier together = new CyclicBarrier(2);
                Callable<Decision<UUID>> one = () -> {
                    together.await();
                    return ranks.putFirst(first, room.tom());
                };
                Callable<Decision<UUID>> other = () -> {
                    together.await();
                    return ranks.putFirst(second, room.tom());
                };
                for (var pressed : both.invokeAll(List.of(one, other))) {
                    assertThat(pressed.get()).isInstanceOf(Decision.Done.class);
                }
                assertThat(ranks.choices().values()).containsExactlyInAnyOrder(1, 2);
            }
        } finally {
            both.shutdownNow();
        }
    }

    private UUID asked(UUID sowing) {
        LocalDate day = LocalDate.of(2027, 3, 10);
        database()
                .sql()
                .transaction(tx -> requests.add(
                        tx.dsl(),
                        new SpaceRequest(
                                sowing,
                                SpaceRequest.State.WAITING,
                                day,
                                day,
                                day,
                                14,
                                2,
                                new Band(24, 30),
                                false,
                                "",
                                1)));
        clock.advance(Duration.ofMinutes(1));
        return sowing;
    }
}
