package warmshelf.allocation;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.crop.CropCatalogue;
import warmshelf.decision.Declined;
import warmshelf.testing.GrowRoom;
import warmshelf.testing.StoreContract;
import warmshelf.words.Units;

/** Many people who reach for the same few quarters at once. */
abstract class StayRaceContract extends StoreContract {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 10);
    private static final int PEOPLE = 8;
    private static final int ATTEMPTS = 100;

    private GrowRoom room;
    private StayStore stays;

    @BeforeEach
    void moveIn() {
        room = new GrowRoom(database(), audit());
        stays = new StayStore(audit(), new ClashStore(CropCatalogue.bundled()));
    }

    @Test
    void whoever_was_told_yes_has_the_space_and_nobody_else_lies_there() throws Exception {
        UUID sowing = room.tomsPeppers();

        List<UUID> acknowledged = atOnce(person -> attempts(sowing, new Random(person)));

        assertThat(acknowledged)
                .as("some of the %d attempts succeed", PEOPLE * ATTEMPTS)
                .hasSizeGreaterThan(4);
        assertThat(database().sql().select(STAY.ID).from(STAY).fetch(STAY.ID))
                .as("every placement that was acknowledged is kept, and no other")
                .containsExactlyInAnyOrderElementsOf(acknowledged);
        assertNoOverlap();
        assertEveryStayHasItsQuarters();
    }

    private List<UUID> attempts(UUID sowing, Random random) {
        List<UUID> acknowledged = new ArrayList<>();
        UUID[] places = {room.m1Place1(), room.m1Place2()};
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            List<Slot> slots = Slot.of(1 << random.nextInt(3));
            LocalDate from = DAY.plusDays(random.nextInt(6));
            PlaceAndDays spot = new PlaceAndDays(
                    places[random.nextInt(2)],
                    slots.get(random.nextInt(slots.size())),
                    from,
                    from.plusDays(1 + random.nextInt(3)));
            int celsius = 25 + random.nextInt(2);
            try {
                acknowledged.add(database()
                        .sql()
                        .transactionResult(
                                tx -> stays.layOnMat(tx.dsl(), sowing, spot, celsius, new Band(24, 30), room.tom())));
            } catch (Declined refused) {
                assertThat(refused.reason().words(Units.METRIC)).isNotBlank();
            }
        }
        return acknowledged;
    }

    /** Judged from the stays themselves, not from the keys that are on trial. */
    private void assertNoOverlap() {
        Set<String> seen = new HashSet<>();
        for (Record stay : database().sql().selectFrom(STAY)) {
            Slot slot = new Slot(stay.get(STAY.FIRST_QUARTER), stay.get(STAY.QUARTERS));
            stay.get(STAY.FROM_DAY).datesUntil(stay.get(STAY.TO_DAY)).forEach(day -> {
                for (int offset = 0; offset < slot.quarters(); offset++) {
                    String quarter = stay.get(STAY.PLACE_ID) + " " + (slot.firstQuarter() + offset) + " " + day;
                    assertThat(seen.add(quarter)).as("twice: " + quarter).isTrue();
                }
            });
        }
    }

    private void assertEveryStayHasItsQuarters() {
        int wanted = database().sql().selectFrom(STAY).stream()
                .mapToInt(stay -> stay.getQuarters()
                        * (int) (stay.getToDay().toEpochDay()
                                - stay.getFromDay().toEpochDay()))
                .sum();
        assertThat(database().sql().fetchCount(QUARTER_DAY)).isEqualTo(wanted);
        assertThat(database()
                        .sql()
                        .select(QUARTER_DAY.ON_DAY)
                        .from(QUARTER_DAY)
                        .groupBy(QUARTER_DAY.MAT_ID, QUARTER_DAY.ON_DAY)
                        .having(DSL.countDistinct(QUARTER_DAY.CELSIUS).gt(1))
                        .fetch())
                .as("a mat has one temperature a day")
                .isEmpty();
    }

    /** The control: the same people at a table that nothing guards do collide, so the test above can see collisions. */
    @Test
    void looking_first_and_then_writing_without_a_key_lets_everyone_in() throws Exception {
        database().sql().execute("create table unguarded (quarter integer not null, on_day date not null)");
        CyclicBarrier allHaveLooked = new CyclicBarrier(PEOPLE);
        try {
            List<Boolean> yes = atOnce(person -> List.of(lookThenWrite(allHaveLooked)));

            assertThat(yes).containsOnly(true).hasSize(PEOPLE);
            assertThat(database().sql().fetchCount(DSL.table("unguarded"))).isEqualTo(PEOPLE);
        } finally {
            database().sql().execute("drop table unguarded");
        }
    }

    private boolean lookThenWrite(CyclicBarrier allHaveLooked) {
        return database().sql().transactionResult(tx -> {
            boolean free = tx.dsl().fetchCount(DSL.table("unguarded"), DSL.condition("quarter = 1")) == 0;
            allHaveLooked.await();
            if (free) {
                tx.dsl().execute("insert into unguarded (quarter, on_day) values (1, date '2027-03-10')");
            }
            return free;
        });
    }

    private static <T> List<T> atOnce(Turn<T> turn) throws Exception {
        ExecutorService people = Executors.newFixedThreadPool(PEOPLE);
        try {
            List<Callable<List<T>>> turns = new ArrayList<>();
            for (int person = 0; person < PEOPLE; person++) {
                int number = person;
                turns.add(() -> turn.take(number));
            }
            List<T> all = new ArrayList<>();
            for (Future<List<T>> done : people.invokeAll(turns)) {
                all.addAll(done.get());
            }
            return all;
        } finally {
            people.shutdownNow();
        }
    }

    private interface Turn<T> {
        List<T> take(int person) throws Exception;
    }
}
