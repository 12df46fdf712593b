package warmshelf.photo;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PHOTO;
import static warmshelf.db.generated.Tables.SOWING;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import warmshelf.db.Audit;
import warmshelf.db.Database;

/** Keeps pictures with the entries they belong to. */
public final class PhotoStore {
    /** More would say no more. */
    static final int MOST_AT_ENTRY = 3;

    private final Database database;
    private final Audit audit;

    public PhotoStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** What became of a picture that was to be kept. */
    enum Keeping {
        ADDED,
        THERE_BEFORE,
        ID_IN_USE,
        NO_ENTRY,
        ENOUGH
    }

    /**
     * The entry a picture belongs to.
     *
     * @param grower whose sowing it tells of
     * @param seenOn in the group's time zone
     */
    record About(UUID entry, UUID sowing, UUID grower, LocalDate seenOn, String step) {}

    /** An entry at a sowing; a mat's reading takes no picture. */
    Optional<About> entry(UUID id) {
        return database.sql()
                .select(ENTRY.ID, SOWING.ID, SOWING.MEMBER_ID, ENTRY.SEEN_ON, ENTRY.STEP)
                .from(ENTRY)
                .join(SOWING)
                .on(SOWING.ID.eq(ENTRY.SOWING_ID))
                .where(ENTRY.ID.eq(id))
                .fetchOptional(row -> new About(row.value1(), row.value2(), row.value3(), row.value4(), row.value5()));
    }

    /** Keeps a picture once, however often it is sent; it is on the disk before this returns. */
    Keeping add(UUID id, UUID entry, Picture picture, UUID by) {
        Keeping keeping = database.sql().transactionResult(inside -> add(inside.dsl(), id, entry, picture, by));
        database.flush();
        return keeping;
    }

    private Keeping add(DSLContext tx, UUID id, UUID entry, Picture picture, UUID by) {
        // Held, so that two pictures sent at once are counted one after the other.
        boolean isThere = tx.select(ENTRY.ID)
                .from(ENTRY)
                .where(ENTRY.ID.eq(entry))
                .and(ENTRY.SOWING_ID.isNotNull())
                .forUpdate()
                .fetchOptional()
                .isPresent();
        if (!isThere) {
            return Keeping.NO_ENTRY;
        }
        Optional<UUID> before =
                tx.select(PHOTO.ENTRY_ID).from(PHOTO).where(PHOTO.ID.eq(id)).fetchOptional(PHOTO.ENTRY_ID);
        if (before.isPresent()) {
            return before.get().equals(entry) ? Keeping.THERE_BEFORE : Keeping.ID_IN_USE;
        }
        if (tx.fetchCount(PHOTO, PHOTO.ENTRY_ID.eq(entry).and(PHOTO.REMOVED_AT.isNull())) >= MOST_AT_ENTRY) {
            return Keeping.ENOUGH;
        }
        tx.insertInto(PHOTO)
                .set(PHOTO.ID, id)
                .set(PHOTO.ENTRY_ID, entry)
                .set(PHOTO.WIDTH, picture.width())
                .set(PHOTO.HEIGHT, picture.height())
                .set(PHOTO.JPEG, picture.jpeg())
                .set(PHOTO.ADDED_BY, by)
                .set(PHOTO.ADDED_AT, audit.now())
                .execute();
        audit.write(tx, by, "add photo", "entry", entry, picture.jpeg().length + " bytes");
        return Keeping.ADDED;
    }

    /** The pictures of a sowing, by the entry they belong to, in the order in which they were added. */
    public Map<UUID, List<Photo>> ofSowing(UUID sowing) {
        return database.sql()
                .select(PHOTO.ID, PHOTO.ENTRY_ID, PHOTO.WIDTH, PHOTO.HEIGHT, PHOTO.ADDED_BY, MEMBER.NAME)
                .from(PHOTO)
                .join(ENTRY)
                .on(ENTRY.ID.eq(PHOTO.ENTRY_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(PHOTO.ADDED_BY))
                .where(ENTRY.SOWING_ID.eq(sowing))
                .and(PHOTO.REMOVED_AT.isNull())
                .orderBy(PHOTO.ADDED_AT, PHOTO.ID)
                .fetchGroups(PHOTO.ENTRY_ID, PhotoStore::photo);
    }

    /** The pictures of some entries, by the entry they belong to, in the order in which they were added. */
    public Map<UUID, List<Photo>> ofEntries(Collection<UUID> entries) {
        if (entries.isEmpty()) {
            return Map.of();
        }
        return database.sql()
                .select(PHOTO.ID, PHOTO.ENTRY_ID, PHOTO.WIDTH, PHOTO.HEIGHT, PHOTO.ADDED_BY, MEMBER.NAME)
                .from(Database.listed(PHOTO, PHOTO.ENTRY_ID, entries))
                .join(MEMBER)
                .on(MEMBER.ID.eq(PHOTO.ADDED_BY))
                .where(PHOTO.REMOVED_AT.isNull())
                .orderBy(PHOTO.ADDED_AT, PHOTO.ID)
                .fetchGroups(PHOTO.ENTRY_ID, PhotoStore::photo);
    }

    Optional<Photo> find(UUID id) {
        return database.sql()
                .select(PHOTO.ID, PHOTO.ENTRY_ID, PHOTO.WIDTH, PHOTO.HEIGHT, PHOTO.ADDED_BY, MEMBER.NAME)
                .from(PHOTO)
                .join(MEMBER)
                .on(MEMBER.ID.eq(PHOTO.ADDED_BY))
                .where(PHOTO.ID.eq(id))
                .and(PHOTO.REMOVED_AT.isNull())
                .fetchOptional(PhotoStore::photo);
    }

    private static Photo photo(Record row) {
        return new Photo(
                row.get(PHOTO.ID),
                row.get(PHOTO.ENTRY_ID),
                row.get(PHOTO.WIDTH),
                row.get(PHOTO.HEIGHT),
                row.get(PHOTO.ADDED_BY),
                row.get(MEMBER.NAME));
    }

    Optional<byte[]> jpeg(UUID id) {
        return database.sql()
                .select(PHOTO.JPEG)
                .from(PHOTO)
                .where(PHOTO.ID.eq(id))
                .and(PHOTO.REMOVED_AT.isNull())
                .fetchOptional(PHOTO.JPEG);
    }

    /** Takes a picture out for good; what stays is its id, and who took it out when. */
    void remove(Photo photo, UUID by) {
        database.sql().transaction(inside -> {
            int removed = inside.dsl()
                    .update(PHOTO)
                    .set(PHOTO.JPEG, new byte[0])
                    .set(PHOTO.REMOVED_BY, by)
                    .set(PHOTO.REMOVED_AT, audit.now())
                    .where(PHOTO.ID.eq(photo.id()))
                    .and(PHOTO.REMOVED_AT.isNull())
                    .execute();
            if (removed > 0) {
                audit.write(
                        inside.dsl(),
                        by,
                        "take photo out",
                        "entry",
                        photo.entry(),
                        photo.id().toString());
            }
        });
    }
}
