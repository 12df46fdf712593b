package warmshelf.frost.files;

import static warmshelf.db.generated.Tables.FROST_IMPORT;
import static warmshelf.db.generated.Tables.FROST_IMPORT_PROBLEM;
import static warmshelf.db.generated.Tables.FROST_STATION;
import static warmshelf.db.generated.Tables.FROST_STATION_DATE;
import static warmshelf.db.generated.Tables.FROST_STATION_SEASON;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.POSTCODE_PLACE;

import java.io.IOException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectOnConditionStep;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.Member;
import warmshelf.frost.evidence.VersionStore;

/** Keeps imports: begun, read in one transaction, then taken or given up by a coordinator, perhaps removed later. */
public final class ImportStore {
    private static final Member DECIDER = MEMBER.as("decider");
    private static final String DECIDED = "decided_name";
    private static final String SUBJECT = "frost import";
    private static final int LONGEST_WORDS = 4000;
    private static final int LONGEST_NAME = 200;
    private static final int MOST_LISTED = 100;

    private final Database database;
    private final Audit audit;

    public ImportStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** Reads the files; what it finds goes into the transaction. */
    interface Reading {
        void read(ImportedRows findings, ReadingProgress watch) throws IOException;
    }

    /** Notes that files were sent and are to be read. */
    UUID begin(ImportKind kind, String fileName, long bytes, UUID by) {
        UUID id = UUID.randomUUID();
        OffsetDateTime now = audit.now();
        database.sql().transaction(work -> {
            work.dsl()
                    .insertInto(FROST_IMPORT)
                    .set(FROST_IMPORT.ID, id)
                    .set(FROST_IMPORT.KIND, kind.word())
                    .set(FROST_IMPORT.FILE_NAME, StationCodes.shortened(fileName, LONGEST_NAME))
                    .set(FROST_IMPORT.BYTES_TOTAL, bytes)
                    .set(FROST_IMPORT.BYTES_READ, 0L)
                    .set(FROST_IMPORT.ROWS_READ, 0L)
                    .set(FROST_IMPORT.ROWS_GOOD, 0L)
                    .set(FROST_IMPORT.STATE, ImportState.READING.word())
                    .set(FROST_IMPORT.WORDS, "")
                    .set(FROST_IMPORT.STARTED_BY, by)
                    .set(FROST_IMPORT.STARTED_AT, now)
                    .set(FROST_IMPORT.BEAT_AT, now)
                    .execute();
            audit.write(work.dsl(), by, "send", SUBJECT, id, "%s '%s'".formatted(kind.word(), fileName));
        });
        return id;
    }

    /**
     * Reads all into the database in one transaction and leaves it ready for a decision. Nothing of it stays when the reading
     * ends in any other way.
     *
     * @throws ReadingCancelled when somebody gave it up meanwhile
     */
    void bring(
            UUID id,
            ImportKind kind,
            UUID by,
            String source,
            ProblemList problems,
            ReadingProgress watch,
            Reading reading) {
        database.sql().transaction(work -> {
            ImportRowsStore rows = new ImportRowsStore(work.dsl(), id, kind, by, audit.now(), source, problems);
            ReadingProgress both = (bytes, lines) -> {
                rows.read(bytes, lines);
                watch.at(bytes, lines);
            };
            rows.whenWritten(() -> watch.at(rows.bytes(), rows.lines()));
            reading.read(rows, both);
            rows.finish();
            int changed = work.dsl()
                    .update(FROST_IMPORT)
                    .set(FROST_IMPORT.STATE, ImportState.READY.word())
                    .set(FROST_IMPORT.BYTES_READ, FROST_IMPORT.BYTES_TOTAL)
                    .set(FROST_IMPORT.ROWS_READ, rows.lines())
                    .set(FROST_IMPORT.ROWS_GOOD, rows.good())
                    .set(FROST_IMPORT.WORDS, StationCodes.shortened(rows.words(), LONGEST_WORDS))
                    .set(FROST_IMPORT.BEAT_AT, audit.now())
                    .where(FROST_IMPORT.ID.eq(id), FROST_IMPORT.STATE.eq(ImportState.READING.word()))
                    .execute();
            if (changed == 0) {
                throw new ReadingCancelled();
            }
            writeProblems(work.dsl(), id, problems);
            audit.write(work.dsl(), by, "read", SUBJECT, id, rows.good() + " rows");
        });
    }

    /**
     * Notes how far the reading has come.
     *
     * @return false when the import is no longer being read, so that the reading may end
     */
    boolean beat(UUID id, long bytes, long rows) {
        return database.sql()
                        .update(FROST_IMPORT)
                        .set(FROST_IMPORT.BYTES_READ, bytes)
                        .set(FROST_IMPORT.ROWS_READ, rows)
                        .set(FROST_IMPORT.BEAT_AT, audit.now())
                        .where(FROST_IMPORT.ID.eq(id), FROST_IMPORT.STATE.eq(ImportState.READING.word()))
                        .execute()
                == 1;
    }

    /** Signs of life for imports that wait for their turn. */
    void beat(Collection<UUID> waiting) {
        database.sql()
                .update(FROST_IMPORT)
                .set(FROST_IMPORT.BEAT_AT, audit.now())
                .where(FROST_IMPORT.ID.in(waiting), FROST_IMPORT.STATE.eq(ImportState.READING.word()))
                .execute();
    }

    /** Ends a reading that led to nothing, with the sentences that say why. */
    void end(UUID id, ImportState state, String words, ProblemList problems) {
        database.sql().transaction(work -> {
            int changed = work.dsl()
                    .update(FROST_IMPORT)
                    .set(FROST_IMPORT.STATE, state.word())
                    .set(FROST_IMPORT.WORDS, StationCodes.shortened(words, LONGEST_WORDS))
                    .where(FROST_IMPORT.ID.eq(id), FROST_IMPORT.STATE.eq(ImportState.READING.word()))
                    .execute();
            if (changed == 1) {
                writeProblems(work.dsl(), id, problems);
                audit.write(work.dsl(), null, state.word(), SUBJECT, id, words);
            }
        });
    }

    private static void writeProblems(DSLContext sql, UUID id, ProblemList problems) {
        for (ImportProblem problem : problems.kept()) {
            sql.insertInto(FROST_IMPORT_PROBLEM)
                    .set(FROST_IMPORT_PROBLEM.IMPORT_ID, id)
                    .set(FROST_IMPORT_PROBLEM.LINE_NUMBER, problem.line())
                    .set(FROST_IMPORT_PROBLEM.SENTENCE, problem.sentence())
                    .execute();
        }
    }

    /** Takes what was read: from now on it counts. False when it is not waiting for that. */
    boolean take(UUID id, UUID by) {
        return decide(id, ImportState.READY, ImportState.TAKEN, by);
    }

    /** Gives up what is being read or was read; nothing of it stays. False when it is neither. */
    boolean giveUp(UUID id, UUID by) {
        return decide(id, ImportState.READING, ImportState.CANCELLED, by)
                || decide(id, ImportState.READY, ImportState.CANCELLED, by);
    }

    /** Ends what was taken; its rows stay as history. False when it is not in use. */
    boolean remove(UUID id, UUID by) {
        return decide(id, ImportState.TAKEN, ImportState.REMOVED, by);
    }

    private boolean decide(UUID id, ImportState from, ImportState to, UUID by) {
        return database.sql().transactionResult(work -> {
            DSLContext sql = work.dsl();
            // the condition decides between two who press at once
            int changed = sql.update(FROST_IMPORT)
                    .set(FROST_IMPORT.STATE, to.word())
                    .set(FROST_IMPORT.DECIDED_BY, by)
                    .set(FROST_IMPORT.DECIDED_AT, audit.now())
                    .where(FROST_IMPORT.ID.eq(id), FROST_IMPORT.STATE.eq(from.word()))
                    .execute();
            if (changed == 0) {
                return false;
            }
            if (from == ImportState.READY && to == ImportState.CANCELLED) {
                deleteRows(sql, id);
            }
            if (to == ImportState.REMOVED) {
                sql.update(FROST_STATION)
                        .set(FROST_STATION.REMOVED_BY, by)
                        .set(FROST_STATION.REMOVED_AT, audit.now())
                        .where(FROST_STATION.IMPORT_ID.eq(id))
                        .execute();
            }
            if (to != ImportState.CANCELLED) {
                VersionStore.grow(sql);
            }
            audit.write(sql, by, to.word(), SUBJECT, id, "");
            return true;
        });
    }

    private static void deleteRows(DSLContext sql, UUID id) {
        sql.deleteFrom(FROST_STATION_SEASON)
                .where(DSL.exists(DSL.selectOne()
                        .from(FROST_STATION)
                        .where(FROST_STATION.ID.eq(FROST_STATION_SEASON.STATION_ID), FROST_STATION.IMPORT_ID.eq(id))))
                .execute();
        sql.deleteFrom(FROST_STATION_DATE)
                .where(DSL.exists(DSL.selectOne()
                        .from(FROST_STATION)
                        .where(FROST_STATION.ID.eq(FROST_STATION_DATE.STATION_ID), FROST_STATION.IMPORT_ID.eq(id))))
                .execute();
        sql.deleteFrom(FROST_STATION).where(FROST_STATION.IMPORT_ID.eq(id)).execute();
        sql.deleteFrom(POSTCODE_PLACE).where(POSTCODE_PLACE.IMPORT_ID.eq(id)).execute();
    }

    Optional<FrostImport> find(UUID id) {
        return imports().where(FROST_IMPORT.ID.eq(id)).fetchOptional(ImportStore::frostImport);
    }

    /** The imports, the newest first; a hundred at most. */
    List<FrostImport> latest() {
        return imports()
                .orderBy(FROST_IMPORT.STARTED_AT.desc(), FROST_IMPORT.ID)
                .limit(MOST_LISTED)
                .fetch(ImportStore::frostImport);
    }

    /** Those that were read and wait for somebody to take them in or not, the oldest first. */
    List<FrostImport> ready() {
        return imports()
                .where(FROST_IMPORT.STATE.eq(ImportState.READY.word()))
                .orderBy(FROST_IMPORT.STARTED_AT, FROST_IMPORT.ID)
                .fetch(ImportStore::frostImport);
    }

    List<ImportProblem> problems(UUID id) {
        return database.sql()
                .selectFrom(FROST_IMPORT_PROBLEM)
                .where(FROST_IMPORT_PROBLEM.IMPORT_ID.eq(id))
                .orderBy(FROST_IMPORT_PROBLEM.LINE_NUMBER)
                .fetch(row -> new ImportProblem(row.getLineNumber(), row.getSentence()));
    }

    private SelectOnConditionStep<Record> imports() {
        return database.sql()
                .select(FROST_IMPORT.asterisk(), MEMBER.CALLED, DECIDER.CALLED.as(DECIDED))
                .from(FROST_IMPORT)
                .join(MEMBER)
                .on(MEMBER.ID.eq(FROST_IMPORT.STARTED_BY))
                .leftJoin(DECIDER)
                .on(DECIDER.ID.eq(FROST_IMPORT.DECIDED_BY));
    }

    private static FrostImport frostImport(Record row) {
        return new FrostImport(
                row.get(FROST_IMPORT.ID),
                ImportKind.named(row.get(FROST_IMPORT.KIND)).orElseThrow(),
                row.get(FROST_IMPORT.FILE_NAME),
                row.get(FROST_IMPORT.BYTES_TOTAL),
                row.get(FROST_IMPORT.BYTES_READ),
                row.get(FROST_IMPORT.ROWS_READ),
                row.get(FROST_IMPORT.ROWS_GOOD),
                ImportState.of(row.get(FROST_IMPORT.STATE)),
                row.get(FROST_IMPORT.WORDS),
                row.get(MEMBER.CALLED),
                row.get(FROST_IMPORT.STARTED_AT).toInstant(),
                row.get(FROST_IMPORT.BEAT_AT).toInstant(),
                row.get(DECIDED, String.class),
                instant(row.get(FROST_IMPORT.DECIDED_AT)));
    }

    private static @Nullable Instant instant(@Nullable OffsetDateTime time) {
        return time == null ? null : time.toInstant();
    }
}
