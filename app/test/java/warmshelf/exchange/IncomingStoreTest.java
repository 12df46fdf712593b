package warmshelf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.INCOMING_TABLE;
import static warmshelf.db.generated.Tables.LOT;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.frost.garden.NightStore;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;
import warmshelf.seed.LotStore;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.SowingStore;
import warmshelf.testing.MutableClock;
import warmshelf.testing.TestGroup;
import warmshelf.words.Units;

class IncomingStoreTest {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    @TempDir
    private Path folder;

    private TestGroup group;
    private Database database;
    private IncomingStore store;
    private final MutableClock clock = new MutableClock(TestGroup.MORNING);

    @BeforeEach
    void open() {
        group = TestGroup.open();
        database = group.database();
        Audit audit = new Audit(clock);
        store = new IncomingStore(
                database,
                new IncomingLogStore(database, audit),
                new IncomingStore.Parts(
                        new LotStore(database, audit),
                        new SowingStore(database, CropCatalogue.bundled(), audit),
                        new EntryStore(audit),
                        CropCatalogue.bundled(),
                        new MemberStore(database, audit),
                        new LinkStore(database, audit),
                        new NightStore(database, audit)));
    }

    @AfterEach
    void close() {
        group.close();
    }

    private IncomingOrder order(int rows) throws IOException {
        StringBuilder text = new StringBuilder("crop,variety,year\n");
        for (int i = 0; i < rows; i++) {
            text.append("pepper,Trial ").append(i).append(",2026\n");
        }
        Path own = Files.createDirectory(folder.resolve(UUID.randomUUID().toString()));
        return new IncomingOrder(
                IncomingKind.LOTS,
                Files.writeString(own.resolve("file-0"), text),
                "lots.csv",
                "f",
                IncomingOrder.Whose.GROUP,
                null,
                group.member().id(),
                TestGroup.TODAY,
                2027,
                Units.METRIC);
    }

    private int lots() {
        return database.sql().fetchCount(LOT);
    }

    @Test
    void what_ends_in_the_midst_leaves_nothing() throws IOException {
        IncomingOrder order = order(300);
        int before = database.sql().fetchCount(AUDIT_LINE);

        assertThatThrownBy(() -> store.take(UUID.randomUUID(), order, (permille, rows) -> {
                    if (rows == 200) {
                        throw new IllegalStateException("the power failed");
                    }
                }))
                .hasMessageContaining("the power failed");

        assertThat(lots()).isZero();
        assertThat(database.sql().fetchCount(INCOMING_TABLE)).isZero();
        assertThat(database.sql().fetchCount(AUDIT_LINE)).isEqualTo(before);
    }

    @Test
    void looking_at_a_file_writes_nothing() throws IOException {
        int before = database.sql().fetchCount(AUDIT_LINE);

        assertThat(store.check(order(10), (permille, rows) -> {}).goodRows()).isEqualTo(10);

        assertThat(lots()).isZero();
        assertThat(database.sql().fetchCount(AUDIT_LINE)).isEqualTo(before);
    }

    @Test
    void more_rows_than_are_taken_at_once_are_refused() throws IOException {
        IncomingOrder order = order(IncomingKind.LOTS.mostRows() + 1);

        assertThatThrownBy(() -> store.check(order, (permille, rows) -> {}))
                .hasMessageContaining("more than 50,000 rows");
    }

    @Test
    void progress_grows_to_the_end() throws IOException {
        AtomicInteger last = new AtomicInteger();

        store.check(order(5_000), (permille, rows) -> {
            assertThat(permille).isBetween(last.get(), 1000);
            last.set(permille);
        });

        assertThat(last).hasValue(1000);
    }

    @Test
    void a_file_given_up_while_it_is_taken_in_ends_at_the_next_row_and_leaves_nothing() throws IOException {
        IncomingJob job = new IncomingJob(order(50), clock.instant());
        job.ready(store.check(job.order(), job::at));

        assertThat(job.beginTaking()).isTrue();
        assertThat(job.beginTaking()).as("of two presses one begins it").isFalse();
        assertThat(job.giveUp()).isTrue();
        assertThatThrownBy(() -> store.take(job.id(), job.order(), job::at)).isInstanceOf(IncomingCancelled.class);

        assertThat(lots()).isZero();
    }

    @Test
    void a_file_given_up_before_is_deleted_and_a_stop_gives_up_all() throws IOException {
        IncomingOrder first = order(1);
        IncomingOrder second = order(1);
        try (IncomingJobs jobs = new IncomingJobs(store, clock)) {
            IncomingJob job = jobs.start(first, PATIENCE);
            assertThat(job.standing().state()).isEqualTo(IncomingState.READY);
            assertThat(jobs.giveUp(job)).isTrue();
            assertThat(jobs.giveUp(job)).isFalse();
            assertThat(jobs.take(job, PATIENCE)).isFalse();
            assertThat(first.file()).doesNotExist();
            jobs.start(second, PATIENCE);
        }
        assertThat(second.file()).doesNotExist();
        assertThat(lots()).isZero();
    }

    @Test
    void a_file_nobody_decides_about_is_forgotten_after_hours() throws IOException {
        IncomingOrder left = order(1);
        try (IncomingJobs jobs = new IncomingJobs(store, clock)) {
            IncomingJob job = jobs.start(left, PATIENCE);
            clock.set(TestGroup.MORNING.plus(Duration.ofHours(3)));
            jobs.start(order(1), PATIENCE);

            assertThat(jobs.find(job.id())).isEmpty();
            assertThat(left.file()).doesNotExist();
        }
    }
}
