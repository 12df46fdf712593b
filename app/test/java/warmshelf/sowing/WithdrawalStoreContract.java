package warmshelf.sowing;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.testing.Decided.done;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.decision.Decision;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.seed.NewLot;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.testing.TestGroup;

abstract class WithdrawalStoreContract extends StoreContract {
    private static final LocalDate FROM = LocalDate.of(2027, 3, 10);
    private static final LocalDate TO = LocalDate.of(2027, 3, 24);
    private static final Band BAND = new Band(24, 30);
    private static final Slot LEFT = new Slot(1, 2);

    private GrowRoom room;
    private SowingStores stores;
    private WithdrawalStore withdrawals;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        stores = SowingStores.over(database(), audit(), FrostSource.bundledOnly());
        withdrawals = stores.histories().withdrawals();
    }

    @Test
    void a_withdrawal_taken_back_gets_its_seed_again_only_where_others_have_not_planned_on_it() {
        UUID lot = room.lots().add(new NewLot("pepper", "Lantern Row", 2026, 20, room.tom(), false, ""), room.tom());
        UUID sowing = room.peppersOf(lot);
        withdrawals.withdraw(sowing, room.tom());
        assertThat(done(withdrawals.takeBack(sowing, room.tom())).seed()).isEqualTo(SeedAgain.HELD);

        withdrawals.withdraw(sowing, room.tom());
        room.peppersOf(lot);

        assertThat(done(withdrawals.takeBack(sowing, room.tom())).seed()).isEqualTo(SeedAgain.GONE_TO_OTHERS);
        assertThat(stores.balances().of(stores.lots().find(lot).orElseThrow()).spokenFor())
                .as("promised once")
                .isEqualTo(12);
        assertThat(stores.lotRequests().find(sowing).orElseThrow().isWithoutSeed())
                .isTrue();
    }

    @Test
    void a_withdrawal_taken_back_gets_its_places_again() {
        UUID sowing = placed(room.tomsPeppers(), true);
        List<Stay> before = stays(sowing);

        WithdrawalStore.GivenUp givenUp = done(withdrawals.withdraw(sowing, room.tom()));
        assertThat(givenUp.places()).isEqualTo(before);
        assertThat(stays(sowing)).isEmpty();
        WithdrawalStore.TakenBack back = done(withdrawals.takeBack(sowing, room.tom()));

        assertThat(back.lostPlace()).isFalse();
        assertThat(back.lostLight()).isFalse();
        assertThat(stays(sowing))
                .extracting(Stay::placeId, Stay::from, Stay::to)
                .containsExactlyElementsOf(before.stream()
                        .map(stay -> org.assertj.core.groups.Tuple.tuple(stay.placeId(), stay.from(), stay.to()))
                        .toList());
        assertThat(state(sowing)).isEqualTo(SpaceRequest.State.PLACED);
        assertThat(stage(sowing)).isEqualTo(SowingStage.PLANNED);
        assertThat(withdrawals.takeBack(sowing, room.tom())).isInstanceOf(Decision.Overtaken.class);
    }

    @Test
    void what_somebody_else_has_by_then_is_not_taken_from_them() {
        UUID sowing = placed(room.tomsPeppers(), true);
        withdrawals.withdraw(sowing, room.tom());
        UUID other = placed(room.priyasTomatoes(), false);

        WithdrawalStore.TakenBack back = done(withdrawals.takeBack(sowing, room.tom()));

        assertThat(back.lostPlace()).isTrue();
        assertThat(stays(sowing)).as("no light without the mat").isEmpty();
        assertThat(stays(other)).hasSize(1);
        assertThat(state(sowing)).isEqualTo(SpaceRequest.State.WAITING);
    }

    @Test
    void what_waited_waits_again_and_a_refusal_keeps_its_reason() {
        UUID waiting = request(room.tomsPeppers());
        UUID refused = request(room.priyasTomatoes());
        database()
                .sql()
                .transaction(tx -> stores.requests()
                        .decide(
                                tx.dsl(),
                                stores.requests().find(tx.dsl(), refused).orElseThrow(),
                                SpaceRequest.State.REFUSED,
                                "No room.",
                                room.priya()));
        assertThat(done(withdrawals.withdraw(waiting, room.tom())).places()).isEmpty();
        withdrawals.withdraw(refused, room.priya());

        assertThat(done(withdrawals.takeBack(waiting, room.tom())).lostPlace()).isFalse();
        withdrawals.takeBack(refused, room.priya());

        assertThat(state(waiting)).isEqualTo(SpaceRequest.State.WAITING);
        assertThat(state(refused)).isEqualTo(SpaceRequest.State.REFUSED);
        assertThat(stores.requests().find(refused).orElseThrow().reason()).isEqualTo("No room.");
    }

    @Test
    void after_a_day_there_is_no_way_back() {
        UUID sowing = request(room.tomsPeppers());
        withdrawals.withdraw(sowing, room.tom());
        Sowing withdrawn = stores.sowings().find(sowing).orElseThrow();
        clock.set(TestGroup.MORNING.plus(Duration.ofHours(23)));
        assertThat(withdrawals.mayTakeBack(withdrawn)).isTrue();

        clock.set(TestGroup.MORNING.plus(Duration.ofHours(25)));

        assertThat(withdrawals.mayTakeBack(withdrawn)).isFalse();
        assertThat(withdrawals.takeBack(sowing, room.tom())).isInstanceOf(Decision.Overtaken.class);
        assertThat(stage(sowing)).isEqualTo(SowingStage.WITHDRAWN);
    }

    private UUID request(UUID sowing) {
        database()
                .sql()
                .transaction(tx -> stores.requests()
                        .add(
                                tx.dsl(),
                                new SpaceRequest(
                                        sowing,
                                        SpaceRequest.State.WAITING,
                                        FROM,
                                        FROM,
                                        FROM,
                                        14,
                                        2,
                                        BAND,
                                        true,
                                        "",
                                        1)));
        return sowing;
    }

    private UUID placed(UUID sowing, boolean light) {
        request(sowing);
        database().sql().transaction(tx -> {
            stores.stays()
                    .layOnMat(
                            tx.dsl(), sowing, new PlaceAndDays(room.m1Place1(), LEFT, FROM, TO), 26, BAND, room.tom());
            if (light) {
                PlaceAndDays lit = new PlaceAndDays(room.lit1(), LEFT, TO, TO.plusDays(20));
                stores.stays().layUnderLight(tx.dsl(), sowing, lit, room.tom());
            }
            SpaceRequest request = stores.requests().find(tx.dsl(), sowing).orElseThrow();
            stores.requests().decide(tx.dsl(), request, SpaceRequest.State.PLACED, "", room.priya());
        });
        return sowing;
    }

    private List<Stay> stays(UUID sowing) {
        return StayBookStore.ofSowing(database().sql(), sowing);
    }

    private SpaceRequest.State state(UUID sowing) {
        return stores.requests().find(sowing).orElseThrow().state();
    }

    private SowingStage stage(UUID sowing) {
        return stores.sowings().find(sowing).orElseThrow().stage();
    }
}
