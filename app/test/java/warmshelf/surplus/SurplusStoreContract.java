package warmshelf.surplus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SURPLUS_OFFER;
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
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.finding.season.SeasonStore;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.harvest.HarvestStore;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.History;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStores;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.SeenSowings;
import warmshelf.testing.StoreContract;

/** Tom has ten peppers and wanted eight; what he gives away and Priya takes, on every database. */
abstract class SurplusStoreContract extends StoreContract {
    private static final SurplusStore.Moment NOW = new SurplusStore.Moment(SeenSowings.FIRST.plusDays(15), 2027);

    private GrowRoom room;
    private SeenSowings seen;
    private SowingStores stores;
    private SurplusStore surplus;
    private SurplusBookStore book;
    private UUID peppers;

    @BeforeEach
    void raise() {
        room = new GrowRoom(database(), audit());
        seen = new SeenSowings(database(), audit(), room);
        stores = SowingStores.over(database(), audit(), FrostSource.bundledOnly());
        surplus = new SurplusStore(stores);
        book = new SurplusBookStore(stores);
        peppers = seen.upOnDay(9, seen.lot());
    }

    @Test
    void what_is_over_is_asked_about_until_it_is_offered() {
        assertThat(book.leftOver(room.tom(), NOW))
                .singleElement()
                .satisfies(history -> assertThat(over(history)).isEqualTo(2));
        assertThat(book.leftOver(room.priya(), NOW)).isEmpty();

        done(surplus.offer(peppers, 2, NOW, room.tom()));

        assertThat(book.leftOver(room.tom(), NOW)).isEmpty();
        assertThat(book.all(NOW)).singleElement().satisfies(each -> {
            assertThat(each.free()).isEqualTo(2);
            assertThat(each.where()).contains("M1");
        });
    }

    private static int over(History history) {
        return SurplusJudge.beyondWanted(history.sowing(), history.progress());
    }

    @Test
    void nobody_offers_more_than_are_alive_or_fewer_than_are_taken() {
        assertThat(surplus.offer(peppers, 11, NOW, room.tom()).refusal())
                .get()
                .isEqualTo(new SurplusRefusal.TooMany(title(), 11, 10));
        done(surplus.offer(peppers, 4, NOW, room.tom()));
        done(surplus.take(peppers, 3, NOW, room.priya()));

        assertThat(surplus.offer(peppers, 2, NOW, room.tom()).refusal())
                .get()
                .isEqualTo(new SurplusRefusal.TakenAlready(2, 3));
        done(surplus.end(peppers, room.tom()));

        assertThat(book.all(NOW)).singleElement().satisfies(each -> {
            assertThat(each.offered()).isEqualTo(3);
            assertThat(each.free()).isZero();
        });
    }

    private String title() {
        return stores.sowings().find(peppers).orElseThrow().title();
    }

    @Test
    void nobody_takes_more_than_are_free_nor_their_own() {
        done(surplus.offer(peppers, 4, NOW, room.tom()));
        done(surplus.take(peppers, 3, NOW, room.priya()));

        assertThat(surplus.take(peppers, 2, NOW, room.priya())).isInstanceOf(Decision.Overtaken.class);
        assertThat(surplus.take(peppers, 1, NOW, room.tom()).refusal())
                .get()
                .isEqualTo(new SurplusRefusal.OwnPlants(title()));
        assertThat(book.find(peppers, NOW).orElseThrow().free()).isEqualTo(1);
    }

    @Test
    void of_what_died_meanwhile_nothing_is_free() {
        done(surplus.offer(peppers, 4, NOW, room.tom()));
        seen.look(peppers, 15, 2);

        assertThat(book.find(peppers, NOW).orElseThrow().free()).isEqualTo(2);
        assertThat(surplus.take(peppers, 3, NOW, room.priya())).isInstanceOf(Decision.Overtaken.class);
    }

    @Test
    void of_two_who_take_the_last_at_once_one_gets_them() throws Exception {
        done(surplus.offer(peppers, 10, NOW, room.tom()));
        for (int round = 0; round < 5; round++) {
            List<String> answers = atOnce(() -> answer(room.priya()), () -> answer(room.priya()));

            assertThat(answers).as("round " + round).containsExactlyInAnyOrder("taken", "too few");
            Taking taken = book.find(peppers, NOW).orElseThrow().promised().get(0);
            done(surplus.giveBack(taken, room.priya()));
        }
        assertThat(book.find(peppers, NOW).orElseThrow().free()).isEqualTo(10);
    }

    private String answer(UUID taker) {
        return surplus.take(peppers, 6, NOW, taker) instanceof Decision.Done<Sowing> ? "taken" : "too few";
    }

    private static List<String> atOnce(Callable<String> one, Callable<String> other) throws Exception {
        CyclicBarrier start = new CyclicBarrier(2);
        ExecutorService people = Executors.newFixedThreadPool(2);
        try {
            List<String> answers = new ArrayList<>();
            List<Callable<String>> both = List.of(after(start, one), after(start, other));
            for (Future<String> answer : people.invokeAll(both)) {
                answers.add(answer.get());
            }
            return answers;
        } finally {
            people.shutdownNow();
        }
    }

    private static Callable<String> after(CyclicBarrier start, Callable<String> work) {
        return () -> {
            start.await();
            return work.call();
        };
    }

    /** The control for the race above: the table itself refuses more than there are, whatever the program does. */
    @Test
    void the_table_refuses_more_taken_than_offered() {
        done(surplus.offer(peppers, 2, NOW, room.tom()));

        assertThatThrownBy(() -> database()
                        .sql()
                        .update(SURPLUS_OFFER)
                        .set(SURPLUS_OFFER.TAKEN, 3)
                        .execute())
                .isInstanceOf(DataAccessException.class);
    }

    @Test
    void what_was_handed_over_counts_in_the_season_and_is_asked_about_in_autumn() {
        done(surplus.offer(peppers, 4, NOW, room.tom()));
        done(surplus.take(peppers, 3, NOW, room.priya()));
        SeasonStore seasons = new SeasonStore(database().sql(), room.sowings(), stores.entries());
        HarvestStore harvests = new HarvestStore(database(), audit());
        assertThat(seasons.find(2027).totals().given()).isZero();
        assertThat(harvests.plantedOut(room.priya(), 2027)).isEmpty();

        Taking taking = book.find(peppers, NOW).orElseThrow().promised().get(0);
        done(surplus.handOver(taking, NOW.today(), room.priya()));
        seen.enter(peppers, 30, EntryStep.PLANTED_OUT, null);

        assertThat(seasons.find(2027).totals().given()).isEqualTo(3);
        assertThat(seasons.find(2027).totals().plantedOut()).isEqualTo(7);
        assertThat(harvests.plantedOut(room.priya(), 2027))
                .singleElement()
                .satisfies(each -> assertThat(each.plantedOutOn()).isEqualTo(NOW.today()));
        assertThat(surplus.giveBack(taking, room.tom())).isInstanceOf(Decision.Overtaken.class);

        done(surplus.notHandedOver(taking, room.tom()));
        assertThat(seasons.find(2027).totals().given()).isZero();
        assertThat(book.find(peppers, NOW).orElseThrow().promised()).hasSize(1);
    }

    @Test
    void either_side_ends_it_and_the_other_is_told_for_a_week() {
        done(surplus.offer(peppers, 4, NOW, room.tom()));
        done(surplus.take(peppers, 3, NOW, room.priya()));
        done(surplus.giveBack(book.find(peppers, NOW).orElseThrow().promised().get(0), room.tom()));

        List<Surplus> all = book.all(NOW);
        assertThat(all.get(0).free()).isEqualTo(4);
        assertThat(SurplusNews.between(all, room.priya(), false))
                .singleElement()
                .satisfies(told -> assertThat(told.taking().endedBy()).isEqualTo("Tom"));
        assertThat(SurplusNews.between(all, room.tom(), false)).isEmpty();

        clock.advance(Duration.ofDays(8));
        assertThat(SurplusNews.between(book.all(NOW), room.priya(), false)).isEmpty();
    }

    @Test
    void an_offer_ends_with_its_sowing_with_the_season_and_with_its_grower() {
        done(surplus.offer(peppers, 4, NOW, room.tom()));
        SurplusStore.Moment next = new SurplusStore.Moment(NOW.today(), 2028);
        assertThat(book.all(next)).isEmpty();
        assertThat(surplus.take(peppers, 1, next, room.priya()).refusal())
                .get()
                .isEqualTo(new SurplusRefusal.NotOpen(title()));

        seen.enter(peppers, 16, EntryStep.PLANTED_OUT, null);
        LocalDate out = SeenSowings.FIRST.plusDays(16);
        assertThat(free(out.plusDays(21))).isEqualTo(4);
        assertThat(free(out.plusDays(22))).isZero();

        UUID given = seen.upOnDay(9, seen.lot());
        done(surplus.offer(given, 4, NOW, room.tom()));
        seen.enter(given, 14, EntryStep.GAVE_UP, null);
        assertThat(book.find(given, NOW).orElseThrow().free()).isZero();

        database()
                .sql()
                .update(MEMBER)
                .set(MEMBER.LEFT_AT, audit().now())
                .where(MEMBER.ID.eq(room.tom()))
                .execute();
        assertThat(book.all(NOW)).isEmpty();
        assertThat(surplus.take(peppers, 1, NOW, room.priya())).isInstanceOf(Decision.Refused.class);
    }

    private int free(LocalDate day) {
        return book.find(peppers, new SurplusStore.Moment(day, 2027))
                .orElseThrow()
                .free();
    }

    @Test
    void whoever_leaves_takes_nothing_more() {
        done(surplus.offer(peppers, 4, NOW, room.tom()));
        done(surplus.take(peppers, 3, NOW, room.priya()));

        database().sql().transaction(tx -> surplus.giveAllBack(tx.dsl(), room.priya(), room.tom()));

        assertThat(book.find(peppers, NOW).orElseThrow().free()).isEqualTo(4);
    }
}
