package warmshelf.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY_MOVE;
import static warmshelf.testing.Decided.done;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.ClashStore;
import warmshelf.allocation.PlaceAndDays;
import warmshelf.allocation.RequestStore;
import warmshelf.allocation.Slot;
import warmshelf.allocation.SpaceRefusal;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.SpaceStore;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.allocation.StayStore;
import warmshelf.allocation.WarmDays;
import warmshelf.crop.CropCatalogue;
import warmshelf.testing.Decided;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.words.Units;

abstract class MoveStoreContract extends StoreContract {
    private static final Band WARM = new Band(24, 30);
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Slot LEFT = new Slot(1, 2);
    private static final Slot RIGHT = new Slot(3, 2);

    private GrowRoom room;
    private StayStore stays;
    private MoveStore moves;
    private LyingStore lying;
    private RequestStore requests;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
        requests = new RequestStore(database(), audit());
        moves = new MoveStore(database(), audit(), stays, requests);
        lying = new LyingStore(database(), CropCatalogue.bundled(), new SpaceStore(database()));
    }

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

    private MoveStore.Change change(UUID stay, PlaceAndDays to) {
        return new MoveStore.Change(find(stay), to, at26(to));
    }

    @Test
    void a_taken_place_or_an_unfitting_warmth_is_refused_and_nothing_moves() {
        UUID id = lay(room.tomsPeppers(), room.m1Place1(), LEFT, 10, 20);
        lay(room.priyasTomatoes(), room.m1Place2(), LEFT, 15, 18);

        assertThatThrownBy(() -> move(id, spot(room.m1Place2(), LEFT, 10, 20), 26, room.priya()))
                .isInstanceOf(Decided.NotDone.class)
                .hasMessageContaining("Priya Nair's Harbour Light (Tomato), Mon 15 Mar to Wed 17 Mar");
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
                .hasMessage("Priya Nair moved this to mat M1, place 2, left half, from 12 Mar, a minute ago.");
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
                .hasMessage("Tom Okafor ended this stay, a moment ago.");
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
                .hasMessage("Tom Okafor let this lie longer, a moment ago.");
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
                .hasMessageContaining("is taken by Priya Nair's Harbour Light");

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
        assertThat(moves.whatChanged(id, 1).words(Units.METRIC)).isEqualTo("Priya Nair ended this stay, a moment ago.");
        SpaceRequest request = requests.find(sowing).orElseThrow();
        assertThat(request.isWaiting()).isTrue();
        assertThat(request.reason()).isEqualTo("The mat is broken.");
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

    private void freeAll(LyingStay... seen) {
        for (LyingStay each : seen) {
            done(moves.free(find(each.stay().id()), "next round", TODAY, room.priya()));
        }
    }

    private UUID move(UUID stay, PlaceAndDays spot, int celsius, UUID by) {
        return done(moves.move(find(stay), spot, throughout(spot, celsius), TODAY, by));
    }

    private static WarmDays at26(PlaceAndDays spot) {
        return throughout(spot, 26);
    }

    private static WarmDays throughout(PlaceAndDays spot, int celsius) {
        return WarmDays.throughout(spot.from(), spot.to(), celsius);
    }

    private LyingStay find(UUID stay) {
        return lying.find(stay).orElseThrow();
    }

    private UUID lay(UUID sowing, UUID place, Slot slot, int first, int afterLast) {
        return database()
                .sql()
                .transactionResult(tx ->
                        stays.layOnMat(tx.dsl(), sowing, spot(place, slot, first, afterLast), 26, WARM, room.priya()));
    }

    private UUID layMild(UUID sowing, UUID place, Band band) {
        return database()
                .sql()
                .transactionResult(
                        tx -> stays.layOnMat(tx.dsl(), sowing, spot(place, LEFT, 10, 12), 21, band, room.priya()));
    }

    private void sown(UUID sowing) {
        database()
                .sql()
                .update(SOWING)
                .set(SOWING.STAGE, "sown")
                .where(SOWING.ID.eq(sowing))
                .execute();
    }

    private int rows(UUID stay) {
        return database().sql().fetchCount(QUARTER_DAY, QUARTER_DAY.STAY_ID.eq(stay));
    }

    private static PlaceAndDays spot(UUID place, Slot slot, int first, int afterLast) {
        return new PlaceAndDays(place, slot, march(first), march(afterLast));
    }

    private static LocalDate march(int day) {
        return LocalDate.of(2027, 3, day);
    }
}
