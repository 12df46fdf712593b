package warmshelf.archive;

import static warmshelf.db.generated.Tables.ARCHIVE_FILE;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PHOTO;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;

import java.io.BufferedOutputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Table;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Makes files with the whole group, and knows of those that were made and taken in. */
public final class ArchiveStore {
    private static final int BUFFER = 65_536;

    private final Database database;
    private final Audit audit;

    public ArchiveStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** The group's name, where there is a group. */
    Optional<String> group() {
        return database.sql().select(GROUP_PROFILE.NAME).from(GROUP_PROFILE).fetchOptional(GROUP_PROFILE.NAME);
    }

    /**
     * Writes the group as it is at this moment, and notes that it was done.
     *
     * @param by who asked for it; null: a command
     * @throws UncheckedIOException when it cannot be written; nothing is noted then
     */
    ArchiveMade make(String group, OutputStream out, @Nullable UUID by) {
        ArchiveSchema schema = SchemaStore.newest();
        ArchiveMade made = SnapshotStore.read(database, rows -> {
            BufferedOutputStream buffered = new BufferedOutputStream(out, BUFFER);
            ArchiveMade written =
                    ArchiveWriter.write(schema, rows, group, audit.now().toInstant(), buffered);
            buffered.flush();
            return written;
        });
        database.sql().transaction(inside -> {
            UUID id = note(inside.dsl(), ArchiveNote.Kind.MADE, made.bytes(), made.sha256(), by);
            audit.write(inside.dsl(), by, "make archive", "archive_file", id, made.bytes() + " bytes");
        });
        return made;
    }

    /**
     * Notes that a file was taken in. The row is what the installation keeps of it; the group's own lines of who did what stay as
     * they were in the file.
     */
    void noteTakenIn(long bytes, String sha256) {
        note(database.sql(), ArchiveNote.Kind.TAKEN_IN, bytes, sha256, null);
    }

    private UUID note(DSLContext sql, ArchiveNote.Kind kind, long bytes, String sha256, @Nullable UUID by) {
        UUID id = UUID.randomUUID();
        sql.insertInto(ARCHIVE_FILE)
                .set(ARCHIVE_FILE.ID, id)
                .set(ARCHIVE_FILE.KIND, kind.word())
                .set(ARCHIVE_FILE.BYTES_TOTAL, bytes)
                .set(ARCHIVE_FILE.SHA256, sha256)
                .set(ARCHIVE_FILE.MADE_BY, by)
                .set(ARCHIVE_FILE.MADE_AT, audit.now())
                .execute();
        return id;
    }

    /** The newest file that was made, or taken in, here. */
    Optional<ArchiveNote> last(ArchiveNote.Kind kind) {
        return database.sql()
                .select(ARCHIVE_FILE.BYTES_TOTAL, ARCHIVE_FILE.SHA256, MEMBER.CALLED, ARCHIVE_FILE.MADE_AT)
                .from(ARCHIVE_FILE)
                .leftJoin(MEMBER)
                .on(MEMBER.ID.eq(ARCHIVE_FILE.MADE_BY))
                .where(ARCHIVE_FILE.KIND.eq(kind.word()))
                .orderBy(ARCHIVE_FILE.MADE_AT.desc(), ARCHIVE_FILE.ID)
                .limit(1)
                .fetchOptional(row -> new ArchiveNote(kind, row.value1(), row.value2(), row.value3(), row.value4()));
    }

    /** What a file would hold now. */
    ArchiveTally tally() {
        return new ArchiveTally(
                count(MEMBER),
                count(LOT),
                count(SOWING),
                count(ENTRY),
                count(STAY),
                count(PHOTO, PHOTO.REMOVED_AT.isNull()));
    }

    private long count(Table<?> table, Condition... which) {
        return database.sql().fetchCount(table, which);
    }
}
