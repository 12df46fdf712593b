package warmshelf.frost.files;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.FROST_STATION;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.db.Audit;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.testing.MutableClock;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;

class ImportJobsTest {
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final StationReading HILL = new StationReading("X1", "Hill", 46.8, -92.1, 420, List.of(), List.of());

    @TempDir
    Path temporary;

    private TestDatabase place;
    private ImportStore imports;
    private UUID ilse;

    @BeforeEach
    void open() {
        place = TestDatabase.h2();
        Audit audit = new Audit(new MutableClock(TestGroup.MORNING));
        imports = new ImportStore(place.database(), audit);
        NewMember member = new NewMember("Ilse Brandt", "US", "55803", "not a hash");
        ilse = new MemberStore(place.database(), audit).add(place.database().sql(), member, true, "for a test");
    }

    @AfterEach
    void close() {
        place.close();
    }

    @Test
    void a_reading_ends_soon_after_somebody_gives_it_up_and_leaves_nothing() throws IOException {
        CountDownLatch begun = new CountDownLatch(1);
        try (ImportJobs jobs = new ImportJobs(imports, (order, findings, watch) -> {
            for (long row = 0; ; row++) {
                findings.station(HILL);
                begun.countDown();
                LockSupport.parkNanos(1_000_000);
                watch.at(row, row);
            }
        })) {
            ImportReader.Order order = order();
            UUID id = jobs.start(order, "a test", ilse);
            await(begun);

            imports.giveUp(id, ilse);

            assertSoon(() -> Files.notExists(order.folder()));
            assertThat(imports.find(id).orElseThrow().state()).isEqualTo(ImportState.CANCELLED);
            assertThat(place.database().sql().fetchCount(FROST_STATION)).isZero();
        }
    }

    @Test
    void a_fault_in_the_middle_leaves_nothing_but_a_reference() throws IOException {
        try (ImportJobs jobs = new ImportJobs(imports, (order, findings, watch) -> {
            for (int i = 0; i < 1200; i++) {
                findings.station(HILL);
            }
            throw new IllegalStateException("a secret of the machine");
        })) {
            ImportReader.Order order = order();
            UUID id = jobs.start(order, "a test", ilse);

            assertSoon(() -> imports.find(id).orElseThrow().state() == ImportState.FAILED);

            assertThat(imports.find(id).orElseThrow().words())
                    .contains("The reference ")
                    .doesNotContain("secret");
            assertThat(place.database().sql().fetchCount(FROST_STATION)).isZero();
            assertSoon(() -> Files.notExists(order.folder()));
        }
    }

    @Test
    void one_file_is_read_at_a_time_and_the_others_wait_for_their_turn() throws IOException {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        try (ImportJobs jobs = new ImportJobs(imports, (order, findings, watch) -> {
            begun.countDown();
            await(goOn);
            findings.station(HILL);
        })) {
            UUID first = jobs.start(order(), "a test", ilse);
            UUID second = jobs.start(order(), "a test", ilse);
            await(begun);

            assertThat(jobs.waits(first)).isFalse();
            assertThat(jobs.waits(second)).isTrue();

            goOn.countDown();
            assertSoon(() -> imports.find(second).orElseThrow().state() == ImportState.READY);
            assertThat(imports.find(first).orElseThrow().state()).isEqualTo(ImportState.READY);
        }
    }

    @Test
    void when_the_program_stops_what_was_being_read_says_so() throws IOException {
        CountDownLatch begun = new CountDownLatch(1);
        ImportJobs jobs = new ImportJobs(imports, (order, findings, watch) -> {
            for (long row = 0; ; row++) {
                findings.station(HILL);
                begun.countDown();
                LockSupport.parkNanos(1_000_000);
                watch.at(row, row);
            }
        });
        UUID id = jobs.start(order(), "a test", ilse);
        await(begun);

        jobs.close();

        assertThat(imports.find(id).orElseThrow().state()).isEqualTo(ImportState.FAILED);
        assertThat(imports.find(id).orElseThrow().words()).contains("send the file again");
        assertThat(place.database().sql().fetchCount(FROST_STATION)).isZero();
    }

    private ImportReader.Order order() throws IOException {
        Path folder = Files.createTempDirectory(temporary, "order");
        UploadedFile file = new UploadedFile(Files.writeString(folder.resolve("file"), "x"), "s.csv");
        return new ImportReader.Order(ImportKind.STATIONS, List.of(file), null, "", folder);
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(PATIENCE.toSeconds(), java.util.concurrent.TimeUnit.SECONDS))
                    .isTrue();
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(hurried);
        }
    }

    private static void assertSoon(java.util.function.BooleanSupplier state) {
        long until = System.nanoTime() + PATIENCE.toNanos();
        while (!state.getAsBoolean() && System.nanoTime() < until) {
            LockSupport.parkNanos(5_000_000);
        }
        assertThat(state.getAsBoolean()).isTrue();
    }
}
