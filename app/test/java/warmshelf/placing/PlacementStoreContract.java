package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayStore;
import warmshelf.allocation.WarmDays;
import warmshelf.crop.CropCatalogue;
import warmshelf.decision.Decision;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.SowingStage;
import warmshelf.testing.Decided;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

abstract class PlacementStoreContract extends StoreContract {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 10);

    private GrowRoom room;
    private RequestStore requests;
    private PlacementStore placements;
    private HistoryStore histories;
    private StayStore stays;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        requests = new RequestStore(database(), audit());
        stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        placements = new PlacementStore(database(), requests, stays, room.sowings(), room.claims());
        histories = new HistoryStore(database(), audit(), room.sowings(), new EntryStore(audit()), requests, stays);
    }

    @Test
    void a_placed_request_has_its_stay_and_its_state() {
        UUID sowing = waiting();

        done(placements.place(sowing, spot(), warm(), null, room.priya()));

        assertThat(state(sowing)).isEqualTo(SpaceRequest.State.PLACED);
        assertThat(StayBookStore.ofSowing(database().sql(), sowing)).hasSize(1);
    }

    @Test
    void a_clash_leaves_the_request_waiting() {
        UUID first = waiting();
        UUID second = waiting();
        done(placements.place(first, spot(), warm(), null, room.priya()));

        assertThatThrownBy(() -> done(placements.place(second, spot(), warm(), null, room.priya())))
                .isInstanceOf(Decided.NotDone.class)
                .hasMessageContaining("is taken by Tom's Lantern Row");

        assertThat(state(second)).isEqualTo(SpaceRequest.State.WAITING);
    }

    @Test
    void a_request_is_decided_once() {
        UUID sowing = waiting();
        done(placements.refuse(sowing, "The mats are off.", room.priya()));

        assertThatThrownBy(() -> done(placements.place(sowing, spot(), warm(), null, room.priya())))
                .isInstanceOf(Decided.NotDone.class)
                .hasMessage("This request is not waiting any more; someone else decided on it a moment ago.");
        assertThat(database().sql().fetchCount(QUARTER_DAY)).isZero();
    }

    @Test
    void a_decision_taken_back_frees_the_place_and_lets_the_request_wait() {
        UUID sowing = waiting();
        done(placements.place(sowing, spot(), warm(), null, room.priya()));

        done(placements.takeBack(sowing, room.priya()));

        assertThat(state(sowing)).isEqualTo(SpaceRequest.State.WAITING);
        assertThat(database().sql().fetchCount(QUARTER_DAY)).isZero();
        done(placements.place(sowing, spot(), warm(), null, room.priya()));
        assertThat(state(sowing)).isEqualTo(SpaceRequest.State.PLACED);
    }

    @Test
    void whoever_places_and_whoever_withdraws_at_once_leave_no_place_taken_by_a_withdrawn_sowing() throws Exception {
        ExecutorService both = Executors.newFixedThreadPool(2);
        try {
            for (int round = 0; round < 40; round++) {
                UUID sowing = waiting();
                CyclicBarrier together = new CyclicBarrier(2);
                Callable<Boolean> place = () -> {
                    together.await();
                    try {
                        done(placements.place(sowing, spot(), warm(), null, room.priya()));
                        return true;
                    } catch (Decided.NotDone withdrawnFirst) {
                        return false;
                    }
                };
                Callable<Boolean> withdraw = () -> {
                    together.await();
                    return histories.withdraw(sowing, room.tom()) instanceof Decision.Done;
                };

                for (var done : both.invokeAll(List.of(place, withdraw))) {
                    done.get();
                }

                assertThat(room.sowings().find(sowing).orElseThrow().stage()).isEqualTo(SowingStage.WITHDRAWN);
                assertThat(database().sql().fetchCount(QUARTER_DAY)).isZero();
                assertThat(state(sowing)).isEqualTo(SpaceRequest.State.WITHDRAWN);
            }
        } finally {
            both.shutdownNow();
        }
    }

    @Test
    void seed_that_needs_light_is_not_laid_in_the_dark_unless_somebody_sees_to_its_light() {
        light("none");
        UUID sowing = waiting(true);

        assertThatThrownBy(() -> done(placements.place(sowing, spot(), warm(), null, room.priya())))
                .isInstanceOf(Decided.NotDone.class)
                .hasMessage(
                        "No light reaches mat M1, and this seed needs light to come up. Whoever sees to its light says so at its request.");
        assertThat(state(sowing)).isEqualTo(SpaceRequest.State.WAITING);

        done(placements.place(sowing, spot(), warm(), null, true, room.priya()));

        assertThat(state(sowing)).isEqualTo(SpaceRequest.State.PLACED);
        assertThat(requests.find(sowing).orElseThrow().needsLight()).isFalse();
    }

    @Test
    void what_lies_there_stays_when_its_mat_turns_out_to_be_dark() {
        UUID sowing = waiting(true);
        done(placements.place(sowing, spot(), warm(), null, room.priya()));

        light("none");

        Stay stay = StayBookStore.ofSowing(database().sql(), sowing).get(0);
        database()
                .sql()
                .transaction(tx -> stays.extend(tx.dsl(), stay, stay.to().plusDays(2), room.priya()));
        assertThat(StayBookStore.ofSowing(database().sql(), sowing).get(0).to())
                .isEqualTo(stay.to().plusDays(2));
    }

    private void light(String word) {
        database()
                .sql()
                .update(MAT)
                .set(MAT.LIGHT, word)
                .where(MAT.ID.eq(room.m1()))
                .execute();
    }

    private UUID waiting() {
        return waiting(false);
    }

    private UUID waiting(boolean needsLight) {
        UUID sowing = room.tomsPeppers();
        database()
                .sql()
                .transaction(tx -> requests.add(
                        tx.dsl(),
                        new SpaceRequest(
                                sowing,
                                SpaceRequest.State.WAITING,
                                DAY.minusDays(5),
                                DAY,
                                DAY.plusDays(5),
                                14,
                                2,
                                new Band(24, 30),
                                false,
                                needsLight,
                                "",
                                1)));
        return sowing;
    }

    private WarmDays warm() {
        return WarmDays.throughout(spot().from(), spot().to(), 26);
    }

    private PlaceAndDays spot() {
        return new PlaceAndDays(room.m1Place1(), new Slot(1, 2), DAY, DAY.plusDays(3));
    }

    private SpaceRequest.State state(UUID sowing) {
        return requests.find(sowing).orElseThrow().state();
    }
}
