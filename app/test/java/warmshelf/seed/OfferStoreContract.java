package warmshelf.seed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.testing.Decided.done;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jooq.exception.DataAccessException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.sowing.LotUseStore;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;

abstract class OfferStoreContract extends StoreContract {
    private LotStore lots;
    private OfferStore offers;
    private UUID tom;
    private UUID priya;

    @BeforeEach
    void moveIn() {
        lots = new LotStore(database(), audit());
        offers = new OfferStore(
                database(), audit(), lots, new LotBalanceStore(database(), audit(), lots, new LotUseStore(database())));
        tom = member("Tom Brandt");
        priya = member("Priya Brandt");
    }

    @Test
    void no_more_is_offered_than_there_is() {
        UUID lot = add(20);

        assertThat(mostOffered(offers.offer(lot, 21, tom))).isEqualTo(20);
        assertThat(done(offers.offer(lot, 20, tom))).isEqualTo(20);
        assertThat(find(lot).offered()).isEqualTo(20);
    }

    @Test
    void what_a_sowing_will_use_is_neither_offered_nor_taken() {
        GrowRoom room = new GrowRoom(database(), audit());
        UUID lot = room.lots().add(new NewLot("pepper", "Lantern Row", 2026, 34, room.tom(), false, ""), room.tom());
        room.peppersOf(lot);

        assertThat(mostOffered(offers.offer(lot, 23, tom))).isEqualTo(22);
        assertThat(done(offers.offer(lot, 22, tom))).isEqualTo(22);
        // Planned by its owner before the offer was made smaller: what is promised comes first.
        room.peppersOf(lot);
        assertThat(offers.take(find(lot), UUID.randomUUID(), 11, priya).refusal())
                .contains(new SeedRefusal.TooFewOffered(10, 11));
        done(offers.take(find(lot), UUID.randomUUID(), 10, priya));
        assertThat(find(lot).offered()).isZero();
    }

    @Test
    void seed_that_is_taken_becomes_a_lot_of_the_takers_with_its_tests_and_storage() {
        UUID lot = add(40);
        lots.recordTest(lot, new GerminationTest(LocalDate.of(2027, 2, 1), 8, 10), tom);
        offers.offer(lot, 30, tom);
        UUID taken = UUID.randomUUID();

        done(offers.take(find(lot), taken, 12, priya));

        Lot hers = find(taken);
        assertThat(hers.ownerId()).isEqualTo(priya);
        assertThat(hers.seedsLeft()).isEqualTo(12);
        assertThat(hers.treated()).isTrue();
        assertThat(hers.note()).isEqualTo("wear gloves");
        assertThat(hers.source()).isEqualTo(SeedSource.SAVED);
        assertThat(hers.storage()).isEqualTo(Storage.of(StorageKind.FRIDGE));
        assertThat(lots.tests(taken)).containsExactly(new GerminationTest(LocalDate.of(2027, 2, 1), 8, 10));
        assertThat(find(lot).seedsLeft()).isEqualTo(28);
        assertThat(find(lot).offered()).isEqualTo(18);
        assertThat(database()
                        .sql()
                        .select(LOT.TAKEN_FROM)
                        .from(LOT)
                        .where(LOT.ID.eq(taken))
                        .fetchSingle()
                        .value1())
                .isEqualTo(lot);
    }

    @Test
    void more_than_is_offered_is_not_taken_and_nothing_changes() {
        UUID lot = add(40);
        offers.offer(lot, 5, tom);
        UUID taken = UUID.randomUUID();

        assertThat(offers.take(find(lot), taken, 6, priya).refusal()).contains(new SeedRefusal.TooFewOffered(5, 6));

        assertThat(lots.find(taken)).isEmpty();
        assertThat(find(lot).seedsLeft()).isEqualTo(40);
    }

    @Test
    void seed_nobody_counted_can_be_offered_and_taken() {
        UUID lot = add(null);
        offers.offer(lot, 10, tom);

        done(offers.take(find(lot), UUID.randomUUID(), 10, priya));
        assertThat(find(lot).offered()).isZero();
        assertThat(find(lot).seedsLeft()).isNull();
    }

    @Test
    void what_is_sown_or_recounted_away_is_not_offered_any_more() {
        UUID lot = add(40);
        offers.offer(lot, 30, tom);

        database().sql().transaction(work -> lots.take(work.dsl(), lot, 25, tom));
        assertThat(find(lot).offered()).isEqualTo(15);

        lots.recount(
                lot,
                new Recount(4, true, "", SeedSource.SAVED, Storage.UNKNOWN),
                find(lot).version(),
                tom);
        assertThat(find(lot).offered()).isEqualTo(4);

        lots.recount(
                lot,
                new Recount(null, true, "", SeedSource.SAVED, Storage.UNKNOWN),
                find(lot).version(),
                tom);
        assertThat(find(lot).offered()).isEqualTo(4);
    }

    @RepeatedTest(5)
    void of_two_who_take_the_last_at_once_one_gets_it() throws Exception {
        UUID lot = add(10);
        offers.offer(lot, 10, tom);
        Lot seen = find(lot);
        CountDownLatch start = new CountDownLatch(1);
        ExecutorService people = Executors.newFixedThreadPool(2);
        List<Future<Decision<UUID>>> takings = List.of(
                people.submit(() -> takeWhenTold(start, seen, priya)),
                people.submit(() -> takeWhenTold(start, seen, tom)));
        start.countDown();

        List<Decision<UUID>> answers =
                List.of(takings.get(0).get(), takings.get(1).get());
        people.shutdown();

        assertThat(answers)
                .extracting(Decision::refusal)
                .containsExactlyInAnyOrder(Optional.empty(), Optional.of(new SeedRefusal.TooFewOffered(4, 6)));
        assertThat(find(lot).seedsLeft()).isEqualTo(4);
        assertThat(find(lot).offered()).isEqualTo(4);
    }

    @Test
    void the_database_itself_refuses_what_cannot_be() {
        UUID lot = add(10);

        assertThatThrownBy(() -> set(lot, -1, 0)).isInstanceOf(DataAccessException.class);
        assertThatThrownBy(() -> set(lot, 10, -1)).isInstanceOf(DataAccessException.class);
        assertThatThrownBy(() -> set(lot, 10, 11)).isInstanceOf(DataAccessException.class);
    }

    @Test
    void offering_and_taking_leave_a_line_that_says_who() {
        UUID lot = add(40);
        offers.offer(lot, 30, tom);
        offers.take(find(lot), UUID.randomUUID(), 12, priya);

        assertThat(database()
                        .sql()
                        .select(AUDIT_LINE.ACTION, AUDIT_LINE.MEMBER_ID)
                        .from(AUDIT_LINE)
                        .where(AUDIT_LINE.SUBJECT_ID.eq(lot.toString()))
                        .fetch(line -> line.value1() + " " + line.value2()))
                .contains("offer " + tom, "take offered " + priya);
    }

    private Decision<UUID> takeWhenTold(CountDownLatch start, Lot seen, UUID taker) throws InterruptedException {
        start.await();
        return offers.take(seen, UUID.randomUUID(), 6, taker);
    }

    private static @Nullable Integer mostOffered(Decision<Integer> refused) {
        return refused.refusal()
                .map(SeedRefusal.TooManyToOffer.class::cast)
                .orElseThrow()
                .balance()
                .canBeOffered();
    }

    private void set(UUID lot, int left, int offered) {
        database()
                .sql()
                .update(LOT)
                .set(LOT.SEEDS_LEFT, left)
                .set(LOT.OFFERED, offered)
                .where(LOT.ID.eq(lot))
                .execute();
    }

    private UUID member(String name) {
        return new MemberStore(database(), audit())
                .add(database().sql(), new NewMember(name, "US", "55804", "not a hash"), false, "for a test");
    }

    private UUID add(@Nullable Integer seeds) {
        return lots.add(
                new NewLot(
                        "pepper",
                        "Harbour Light",
                        2026,
                        seeds,
                        tom,
                        true,
                        "wear gloves",
                        SeedSource.SAVED,
                        Storage.of(StorageKind.FRIDGE)),
                tom);
    }

    private Lot find(UUID id) {
        return lots.find(id).orElseThrow();
    }
}
