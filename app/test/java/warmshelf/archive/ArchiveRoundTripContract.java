package warmshelf.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.ARCHIVE_FILE;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MEMBER_SESSION;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import warmshelf.DatabasePlace;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.TableOwnership;
import warmshelf.group.SessionStore;
import warmshelf.testing.MutableClock;
import warmshelf.testing.TestDatabase;

/** A group taken in from a file is the same group, row by row and byte by byte. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class ArchiveRoundTripContract {
    private final MutableClock clock = new MutableClock(FullGroup.MORNING);

    private Path folder;
    private TestDatabase first;
    private Path file;
    private TakenIn taken;
    private Database second;

    /** An empty installation to take the group in. */
    abstract DatabasePlace place(Path folder);

    abstract void closePlace();

    @BeforeAll
    void takeIn(@TempDir Path ofTheClass) throws IOException {
        folder = ofTheClass;
        first = TestDatabase.h2();
        FullGroup.fill(first.database());
        new SessionStore(first.database(), clock)
                .open(first.database()
                        .sql()
                        .select(ENTRY.MADE_BY)
                        .from(ENTRY)
                        .limit(1)
                        .fetchSingle(ENTRY.MADE_BY));
        file = folder.resolve("group.zip");
        export(first.database(), file);
        DatabasePlace place = place(folder.resolve("data"));
        taken = IntakeStore.takeIn(file, place, clock);
        second = place.open();
    }

    @AfterAll
    void close() {
        if (second != null) {
            second.close();
        }
        closePlace();
        first.close();
    }

    private ArchiveMade export(Database database, Path to) throws IOException {
        return Archives.export(database, clock, to);
    }

    @Test
    void each_row_of_each_table_of_the_group_is_there_as_it_was() {
        for (Table<?> table : TableOwnership.ofTheGroup()) {
            // the second opinion: rows as another library reads and writes them, in no order
            assertThat(rows(second.sql(), table))
                    .as(table.getName())
                    .containsExactlyInAnyOrderElementsOf(rows(first.database().sql(), table));
        }
    }

    /** But the line that a file was made, which is written once it was. */
    private static List<String> rows(DSLContext sql, Table<?> table) {
        return sql.fetch(table).map(Record::formatJSON).stream()
                .filter(row -> !row.contains("\"make archive\""))
                .toList();
    }

    @Test
    void a_file_of_the_second_is_the_first_file_byte_by_byte() throws IOException {
        Path again = folder.resolve("again.zip");

        export(second, again);

        assertThat(Archives.parts(again)).isEqualTo(Archives.parts(file));
        assertThat(again).hasSameBinaryContentAs(file);
        Files.delete(again);
    }

    @Test
    void what_is_printed_counts_what_is_there() {
        assertThat(taken.tally()).isEqualTo(new ArchiveStore(second, new Audit(clock)).tally());
        assertThat(taken.tally().photos()).isEqualTo(4);
        assertThat(taken.tally().members()).isEqualTo(14);
        assertThat(taken.group()).isEqualTo("Hill and Shore Seed Starters");
    }

    @Test
    void nobody_is_signed_in_there_and_it_is_known_where_the_group_came_from() {
        assertThat(second.sql().fetchCount(MEMBER_SESSION)).isZero();
        assertThat(second.sql().fetch(ARCHIVE_FILE))
                .filteredOn(row -> row.getKind().equals("taken-in"))
                .extracting(row -> row.getSha256())
                .containsExactly(taken.sha256());
    }

    @Test
    void what_is_kept_from_now_on_is_counted_after_what_was_kept() {
        DSLContext sql = second.sql();
        Long last =
                sql.select(DSL.max(ENTRY.KEPT_ORDER)).from(ENTRY).fetchSingle().value1();
        UUID id = UUID.randomUUID();

        sql.transaction(inside -> {
            inside.dsl()
                    .insertInto(ENTRY)
                    .set(ENTRY.ID, id)
                    .set(
                            ENTRY.SOWING_ID,
                            inside.dsl()
                                    .select(ENTRY.SOWING_ID)
                                    .from(ENTRY)
                                    .where(ENTRY.SOWING_ID.isNotNull())
                                    .limit(1)
                                    .fetchSingle(ENTRY.SOWING_ID))
                    .set(ENTRY.STEP, "look")
                    .set(ENTRY.SEEN_ON, LocalDate.of(2027, 5, 5))
                    .set(ENTRY.SEEN_AT, FullGroup.MORNING.atOffset(ZoneOffset.UTC))
                    .set(ENTRY.FINISHED, false)
                    .set(ENTRY.NOTE, "")
                    .set(
                            ENTRY.MADE_BY,
                            inside.dsl()
                                    .select(ENTRY.MADE_BY)
                                    .from(ENTRY)
                                    .limit(1)
                                    .fetchSingle(ENTRY.MADE_BY))
                    .set(ENTRY.MADE_AT, FullGroup.MORNING.atOffset(ZoneOffset.UTC))
                    .execute();
            assertThat(inside.dsl()
                            .select(ENTRY.KEPT_ORDER)
                            .from(ENTRY)
                            .where(ENTRY.ID.eq(id))
                            .fetchSingle(ENTRY.KEPT_ORDER))
                    .isEqualTo(last + 1);
            inside.dsl().deleteFrom(ENTRY).where(ENTRY.ID.eq(id)).execute();
        });
    }
}
