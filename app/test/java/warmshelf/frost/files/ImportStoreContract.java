package warmshelf.frost.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.FROST_EVIDENCE_VERSION;
import static warmshelf.db.generated.Tables.FROST_STATION;
import static warmshelf.db.generated.Tables.FROST_STATION_DATE;
import static warmshelf.db.generated.Tables.FROST_STATION_SEASON;
import static warmshelf.db.generated.Tables.POSTCODE_PLACE;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jooq.Table;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.BadInput;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.testing.StoreContract;

abstract class ImportStoreContract extends StoreContract {
    private static final ReadingProgress NOBODY = (bytes, rows) -> {};
    private static final StationReading HILL = new StationReading(
            "X1",
            "Hill",
            46.8,
            -92.1,
            420,
            List.of(
                    new FrostDay(Threshold.FROST, Side.SPRING, 1.0, 140.0, 9.5, 30),
                    new FrostDay(Threshold.FROST, Side.AUTUMN, 1.0, 270.0, null, 30)),
            List.of(new StationReading.Season(Threshold.FROST, Side.SPRING, 2026, LocalDate.of(2026, 5, 20))));
    private static final PostcodeRow PLACE = new PostcodeRow("GB", "AB10AA", "First", "Scotland", 57.1, -2.2);

    private ImportStore imports;
    private StationStore stations;
    private UUID ilse;

    @BeforeEach
    void moveIn() {
        imports = new ImportStore(database(), audit());
        stations = new StationStore(database(), audit());
        NewMember member = new NewMember("Ilse Brandt", "US", "55803", "not a hash");
        ilse = new MemberStore(database(), audit()).add(database().sql(), member, true, "for a test");
    }

    @Test
    void what_was_read_waits_and_counts_for_nothing_until_it_is_taken() {
        UUID id = brought();
        long before = version();

        assertThat(imports.find(id).orElseThrow().state()).isEqualTo(ImportState.READY);
        assertThat(imports.find(id).orElseThrow().rowsGood()).isEqualTo(2);
        assertThat(stations.list("", 0)).isEmpty();

        assertThat(imports.take(id, ilse)).isTrue();
        assertThat(stations.list("hIL", 0)).extracting(StationLine::name).containsExactly("Hill");
        assertThat(stations.list("", 0).get(0).spring()).isEqualTo(LocalDate.of(2001, 5, 20));
        assertThat(version()).isEqualTo(before + 1);
    }

    @Test
    void a_reading_that_breaks_in_the_middle_leaves_no_row() {
        UUID id = begun();

        assertThatThrownBy(() -> bring(id, (findings, watch) -> {
                    for (int i = 0; i < 2000; i++) {
                        findings.station(HILL);
                        findings.place(new PostcodeRow("GB", "A" + i, "", "", 57, -2));
                    }
                    throw new IllegalStateException("the disk broke");
                }))
                .hasMessageContaining("the disk broke");

        assertNothingOf();
        assertThat(imports.find(id).orElseThrow().state()).isEqualTo(ImportState.READING);
    }

    @Test
    void a_reading_that_somebody_gave_up_meanwhile_leaves_no_row() {
        UUID id = begun();

        assertThatThrownBy(() -> bring(id, (findings, watch) -> {
                    findings.station(HILL);
                    assertThat(imports.giveUp(id, ilse)).isTrue();
                }))
                .isInstanceOf(ReadingCancelled.class);

        assertThat(imports.beat(id, 1, 1)).isFalse();
        assertThat(imports.find(id).orElseThrow().state()).isEqualTo(ImportState.CANCELLED);
        assertNothingOf();
    }

    @Test
    void files_without_one_good_row_are_refused() {
        UUID id = begun();

        assertThatThrownBy(() -> bring(id, (findings, watch) -> findings.problem(2, "no")))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("Not one row could be used. One row");
    }

    @Test
    void two_hundred_wrong_rows_are_kept_and_the_rest_is_counted() {
        UUID id = begun();

        bring(id, (findings, watch) -> {
            findings.station(HILL);
            for (int line = 2; line < 402; line++) {
                findings.problem(line, "x".repeat(900));
            }
        });

        assertThat(imports.problems(id))
                .hasSize(200)
                .allSatisfy(one -> assertThat(one.sentence()).hasSize(500));
        assertThat(imports.find(id).orElseThrow().words()).contains("400 rows", "first 200 are listed");
    }

    @Test
    void what_was_read_and_is_discarded_is_deleted() {
        UUID id = brought();

        assertThat(imports.giveUp(id, ilse)).isTrue();

        assertNothingOf();
        assertThat(imports.take(id, ilse)).isFalse();
    }

    @Test
    void what_was_taken_and_is_removed_no_longer_counts_but_stays_as_history() {
        UUID id = brought();
        imports.take(id, ilse);
        long before = version();

        assertThat(imports.remove(id, ilse)).isTrue();
        assertThat(imports.remove(id, ilse)).isFalse();

        assertThat(stations.list("", 0)).isEmpty();
        assertThat(stations.count()).isZero();
        assertThat(database().sql().fetchCount(FROST_STATION)).isEqualTo(1);
        assertThat(version()).isEqualTo(before + 1);
    }

    @Test
    void of_several_who_press_at_once_one_decides() throws Exception {
        UUID id = brought();
        ExecutorService people = Executors.newFixedThreadPool(4);
        List<Future<Boolean>> presses = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            boolean takes = i % 2 == 0;
            presses.add(people.submit(() -> takes ? imports.take(id, ilse) : imports.giveUp(id, ilse)));
        }

        int decided = 0;
        for (Future<Boolean> press : presses) {
            decided += press.get() ? 1 : 0;
        }
        people.shutdown();

        assertThat(decided).isEqualTo(1);
    }

    @Test
    void a_reader_that_is_silent_for_over_a_minute_has_been_stopped() {
        UUID id = begun();

        FrostImport entry = imports.find(id).orElseThrow();

        assertThat(entry.isStopped(clock.instant().plus(Duration.ofSeconds(59))))
                .isFalse();
        assertThat(entry.isStopped(clock.instant().plus(Duration.ofSeconds(61))))
                .isTrue();
    }

    @Test
    void a_typed_station_counts_at_once_and_is_removed_once() {
        long before = version();
        UUID id = stations.addMonthly(HILL, "Manual of the county", ilse);

        assertThat(stations.list("", 0)).extracting(StationLine::source).containsExactly("Manual of the county");
        assertThat(stations.removeTyped(id, ilse)).isTrue();
        assertThat(stations.removeTyped(id, ilse)).isFalse();
        assertThat(stations.list("", 0)).isEmpty();
        assertThat(version()).isEqualTo(before + 2);
    }

    @Test
    void a_station_that_came_with_a_file_goes_only_with_it() {
        UUID id = brought();
        imports.take(id, ilse);

        assertThat(stations.removeTyped(stations.list("", 0).get(0).id(), ilse)).isFalse();
    }

    @Test
    void a_page_holds_fifty_stations_and_tells_whether_more_follow() {
        UUID id = begun();
        bring(id, (findings, watch) -> {
            for (int i = 0; i < 53; i++) {
                findings.station(
                        new StationReading("X" + i, "Row %02d".formatted(i), 46, -92, 300, List.of(), List.of()));
            }
        });
        imports.take(id, ilse);

        assertThat(stations.list("", 0)).hasSize(51);
        assertThat(stations.list("", 1)).extracting(StationLine::name).containsExactly("Row 50", "Row 51", "Row 52");
        assertThat(stations.count()).isEqualTo(53);
    }

    @Test
    void every_step_leaves_a_line_that_says_who() {
        UUID id = brought();
        imports.take(id, ilse);
        imports.remove(id, ilse);

        assertThat(database()
                        .sql()
                        .select(AUDIT_LINE.ACTION)
                        .from(AUDIT_LINE)
                        .where(AUDIT_LINE.SUBJECT_ID.eq(id.toString()).and(AUDIT_LINE.MEMBER_ID.eq(ilse)))
                        .fetch(AUDIT_LINE.ACTION))
                .containsExactlyInAnyOrder("send", "read", "taken", "removed");
    }

    private UUID begun() {
        return imports.begin(ImportKind.STATIONS, "stations.csv", 1000, ilse);
    }

    private UUID brought() {
        UUID id = begun();
        bring(id, (findings, watch) -> {
            watch.at(500, 1);
            findings.station(HILL);
            findings.place(PLACE);
        });
        return id;
    }

    private void bring(UUID id, ImportStore.Reading reading) {
        imports.bring(id, ImportKind.STATIONS, ilse, "a test", new ProblemList(), NOBODY, reading);
    }

    private void assertNothingOf() {
        for (Table<?> table : List.of(FROST_STATION, FROST_STATION_DATE, FROST_STATION_SEASON, POSTCODE_PLACE)) {
            assertThat(database().sql().fetchCount(table)).as(table.getName()).isZero();
        }
    }

    private long version() {
        return database()
                .sql()
                .select(FROST_EVIDENCE_VERSION.VERSION)
                .from(FROST_EVIDENCE_VERSION)
                .fetchOptional(FROST_EVIDENCE_VERSION.VERSION)
                .orElse(0L);
    }
}
