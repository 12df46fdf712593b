package warmshelf.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.testing.MutableClock;
import warmshelf.testing.Person;
import warmshelf.testing.TestGroup;

/** What is in the file when somebody is told that it is kept, and how large the file becomes. */
class DataFileTest {
    private static final NewLot LOT = new NewLot("pepper", "Harbour Light", 2025, 40, null, false, "");
    private static final int TIMES = 5;
    /** A file of that size may hold as little as it likes. */
    private static final long SMALL = 8_000_000;

    private final Audit audit = new Audit(new MutableClock(TestGroup.MORNING));

    @TempDir
    private Path folder;

    @Test
    void what_a_transaction_wrote_is_in_the_file_when_it_has_returned() throws IOException, SQLException {
        try (Database database = open()) {
            Person by = TestGroup.moveIn(database, audit).get(0);

            UUID lot = new LotStore(database, audit).add(LOT, by.id());

            assertThat(lotsInCopy()).contains(lot);
        }
    }

    @Test
    void what_a_single_statement_wrote_is_in_the_file_when_it_has_returned() throws IOException, SQLException {
        try (Database database = open()) {
            Person by = TestGroup.moveIn(database, audit).get(0);
            UUID lot = new LotStore(database, audit).add(LOT, by.id());

            database.sql().execute("delete from lot where id = '" + lot + "'");

            assertThat(lotsInCopy()).isEmpty();
        }
    }

    @Test
    void what_many_wrote_at_once_is_in_the_file_when_all_have_returned()
            throws IOException, SQLException, InterruptedException, ExecutionException {
        try (Database database = open()) {
            List<UUID> kept = write(database, 8, 20);

            assertThat(lotsInCopy()).hasSize(160).containsAll(kept);
        }
    }

    @Test
    void an_inner_transaction_that_is_taken_back_leaves_the_outer_one_to_be_kept() throws IOException, SQLException {
        try (Database database = open()) {
            Person by = TestGroup.moveIn(database, audit).get(0);
            LotStore lots = new LotStore(database, audit);

            UUID lot = database.sql().transactionResult(outer -> {
                UUID added = lots.add(outer.dsl(), LOT, by.id());
                assertThatThrownBy(() -> outer.dsl().transaction(inner -> {
                            lots.add(inner.dsl(), LOT, by.id());
                            throw new IllegalStateException("not this one");
                        }))
                        .hasMessageContaining("not this one");
                return added;
            });

            assertThat(lotsInCopy()).containsExactly(lot);
        }
    }

    @Test
    void much_work_at_once_is_in_the_file_at_its_end() throws IOException, SQLException {
        try (Database database = open()) {
            Person by = TestGroup.moveIn(database, audit).get(0);
            LotStore lots = new LotStore(database, audit);

            database.together(() -> {
                for (int number = 0; number < 50; number++) {
                    lots.add(LOT, by.id());
                }
            });

            assertThat(lotsInCopy()).hasSize(50);
        }
    }

    /** Without tidying it had 52 MB. */
    @Test
    void thousands_of_changes_leave_the_file_within_five_times_of_what_it_holds()
            throws IOException, InterruptedException, ExecutionException {
        long largest = 0;
        try (Database database = open()) {
            for (int round = 0; round < 8; round++) {
                write(database, 4, 100);
                largest = Math.max(largest, database.bytes());
            }
        }
        assertThat(largest).isLessThan(Math.max(SMALL, TIMES * Files.size(folder.resolve(Database.FILE))));
    }

    @Test
    void a_file_that_a_killed_program_left_large_is_small_again_soon_after_the_start()
            throws IOException, SQLException, InterruptedException, ExecutionException {
        try (Database database = open()) {
            write(database, 1, 10);
        }
        long packed = Files.size(folder.resolve(Database.FILE));
        Path left = Files.createDirectory(folder.resolve("left"));
        // as H2 leaves it where nobody tidies
        try (var connection = DriverManager.getConnection(DatabaseAddress.ofFile(folder) + ";WRITE_DELAY=0");
                var statement = connection.createStatement()) {
            for (int number = 0; number < 1_500; number++) {
                statement.executeUpdate("update lot set variety = 'Harbour Light " + number + "'");
            }
            Files.copy(folder.resolve(Database.FILE), left.resolve(Database.FILE));
        }
        assertThat(Files.size(left.resolve(Database.FILE))).isGreaterThan(TIMES * packed);

        try (Database database = Database.inFolder(left)) {
            long end = System.nanoTime() + Duration.ofSeconds(30).toNanos();
            while (database.bytes() > TIMES * packed && System.nanoTime() < end) {
                Thread.onSpinWait();
            }
            assertThat(database.bytes()).isLessThanOrEqualTo(TIMES * packed);
        }
    }

    private Database open() {
        return Database.inFolder(folder);
    }

    private List<UUID> write(Database database, int threads, int each) throws InterruptedException, ExecutionException {
        List<Person> cast =
                database.sql().fetchCount(DSL.table("member")) == 0 ? TestGroup.moveIn(database, audit) : List.of();
        UUID by = cast.isEmpty()
                ? database.sql().fetchSingle("select id from member limit 1").get(0, UUID.class)
                : cast.get(0).id();
        LotStore lots = new LotStore(database, audit);
        ExecutorService people = Executors.newFixedThreadPool(threads);
        try {
            List<Future<List<UUID>>> writing = new ArrayList<>();
            for (int thread = 0; thread < threads; thread++) {
                writing.add(people.submit(() -> {
                    List<UUID> own = new ArrayList<>();
                    for (int number = 0; number < each; number++) {
                        own.add(lots.add(LOT, by));
                    }
                    return own;
                }));
            }
            List<UUID> kept = new ArrayList<>();
            for (Future<List<UUID>> one : writing) {
                kept.addAll(one.get());
            }
            return kept;
        } finally {
            people.shutdownNow();
        }
    }

    /** The lots in a copy of the file as it is now, which is what a killed program would leave. */
    private List<UUID> lotsInCopy() throws IOException, SQLException {
        Path copy = Files.createTempDirectory(folder, "copy");
        Files.copy(folder.resolve(Database.FILE), copy.resolve(Database.FILE));
        try (var connection = DriverManager.getConnection(DatabaseAddress.ofFile(copy))) {
            return DSL.using(connection).fetch("select id from lot").getValues(0, UUID.class);
        }
    }
}
