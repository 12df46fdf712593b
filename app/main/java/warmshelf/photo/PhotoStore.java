package warmshelf.photo;

import static org.jooq.impl.DSL.noCondition;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PHOTO;
import static warmshelf.db.generated.Tables.SOWING;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Record1;
import org.jooq.ResultQuery;
import org.jooq.Table;
import org.jooq.TableField;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.generated.tables.records.PhotoRecord;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.news.NewsBookStore;
import warmshelf.news.NewsEvent;
import warmshelf.news.NewsKind;
import warmshelf.seed.PacketPictures;

/** Keeps pictures with the entries or lots they belong to. */
public final class PhotoStore implements PacketPictures {
    private final Database database;
    private final Audit audit;
    private final NewsBookStore news;

    public PhotoStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
        this.news = new NewsBookStore(audit);
    }

    /** How a picture came to be kept. */
    enum Keeping {
        ADDED,
        THERE_BEFORE
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

    /**
     * Keeps a picture once, however often it is sent; it is on the disk before this returns.
     *
     * @param of the id of the entry or lot
     */
    Decision<Keeping> add(UUID id, PhotoSubject subject, UUID of, Picture picture, UUID by) {
        Decision<Keeping> decision = Decision.of(
                () -> database.sql().transactionResult(inside -> add(inside.dsl(), id, subject, of, picture, by)));
        database.flush();
        return decision;
    }

    private Keeping add(DSLContext tx, UUID id, PhotoSubject subject, UUID of, Picture picture, UUID by) {
        if (held(tx, subject, of).fetchOne() == null) {
            throw Declined.missing();
        }
        Optional<Record1<UUID>> before =
                tx.select(column(subject)).from(PHOTO).where(PHOTO.ID.eq(id)).fetchOptional();
        if (before.isPresent()) {
            if (!of.equals(before.get().value1())) {
                throw Declined.refused(new PhotoRefusal.IdInUse());
            }
            return Keeping.THERE_BEFORE;
        }
        if (tx.fetchCount(PHOTO, column(subject).eq(of).and(PHOTO.REMOVED_AT.isNull())) >= subject.most()) {
            throw Declined.refused(new PhotoRefusal.Enough(subject));
        }
        tx.insertInto(PHOTO)
                .set(PHOTO.ID, id)
                .set(column(subject), of)
                .set(PHOTO.WIDTH, picture.width())
                .set(PHOTO.HEIGHT, picture.height())
                .set(PHOTO.JPEG, picture.jpeg())
                .set(PHOTO.ADDED_BY, by)
                .set(PHOTO.ADDED_AT, audit.now())
                .execute();
        audit.write(tx, by, "add photo", subject.word(), of, picture.jpeg().length + " bytes");
        if (subject == PhotoSubject.ENTRY) {
            tx.select(ENTRY.SOWING_ID)
                    .from(ENTRY)
                    .where(ENTRY.ID.eq(of))
                    .fetchOptional(ENTRY.SOWING_ID)
                    .ifPresent(sowing -> news.tellGrower(tx, NewsEvent.ofEntry(NewsKind.PHOTO, sowing, of, by)));
        }
        return Keeping.ADDED;
    }

    /** The entry at a sowing or the lot, held, so that two pictures sent at once are counted one after the other. */
    private static ResultQuery<Record1<UUID>> held(DSLContext tx, PhotoSubject subject, UUID id) {
        return switch (subject) {
            case ENTRY ->
                tx.select(ENTRY.ID)
                        .from(ENTRY)
                        .where(ENTRY.ID.eq(id), ENTRY.SOWING_ID.isNotNull())
                        .forUpdate();
            case LOT -> tx.select(LOT.ID).from(LOT).where(LOT.ID.eq(id)).forUpdate();
        };
    }

    private static TableField<PhotoRecord, UUID> column(PhotoSubject subject) {
        return switch (subject) {
            case ENTRY -> PHOTO.ENTRY_ID;
            case LOT -> PHOTO.LOT_ID;
        };
    }

    /** The pictures of a sowing, by the entry they belong to, in the order in which they were added. */
    public Map<UUID, List<Photo>> ofSowing(UUID sowing) {
        Table<?> ofEntries = PHOTO.join(ENTRY).on(ENTRY.ID.eq(PHOTO.ENTRY_ID));
        return kept(ofEntries, PHOTO.ENTRY_ID, ENTRY.SOWING_ID.eq(sowing))
                .fetchGroups(PHOTO.ENTRY_ID, row -> photo(row, PHOTO.ENTRY_ID));
    }

    /** The pictures of some entries, by the entry they belong to, in the order in which they were added. */
    public Map<UUID, List<Photo>> ofEntries(Collection<UUID> entries) {
        if (entries.isEmpty()) {
            return Map.of();
        }
        return kept(Database.listed(PHOTO, PHOTO.ENTRY_ID, entries), PHOTO.ENTRY_ID, noCondition())
                .fetchGroups(PHOTO.ENTRY_ID, row -> photo(row, PHOTO.ENTRY_ID));
    }

    @Override
    public List<PacketPicture> of(UUID lotId) {
        return kept(PHOTO, PHOTO.LOT_ID, PHOTO.LOT_ID.eq(lotId))
                .fetch(row -> new PacketPicture(
                        row.get(PHOTO.ID),
                        row.get(PHOTO.WIDTH),
                        row.get(PHOTO.HEIGHT),
                        row.get(PHOTO.ADDED_BY),
                        row.get(MEMBER.CALLED)));
    }

    Optional<Photo> find(PhotoSubject subject, UUID id) {
        TableField<PhotoRecord, UUID> of = column(subject);
        return kept(PHOTO, of, PHOTO.ID.eq(id).and(of.isNotNull())).fetchOptional(row -> photo(row, of));
    }

    /** Those of some rows that were not taken out. */
    private ResultQuery<?> kept(Table<?> rows, TableField<PhotoRecord, UUID> of, Condition which) {
        return database.sql()
                .select(PHOTO.ID, of, PHOTO.WIDTH, PHOTO.HEIGHT, PHOTO.ADDED_BY, MEMBER.CALLED)
                .from(rows)
                .join(MEMBER)
                .on(MEMBER.ID.eq(PHOTO.ADDED_BY))
                .where(which, PHOTO.REMOVED_AT.isNull())
                .orderBy(PHOTO.ADDED_AT, PHOTO.ID);
    }

    private static Photo photo(Record row, TableField<PhotoRecord, UUID> of) {
        return new Photo(
                row.get(PHOTO.ID),
                row.get(of),
                row.get(PHOTO.WIDTH),
                row.get(PHOTO.HEIGHT),
                row.get(PHOTO.ADDED_BY),
                row.get(MEMBER.CALLED));
    }

    Optional<byte[]> jpeg(PhotoSubject subject, UUID id) {
        return database.sql()
                .select(PHOTO.JPEG)
                .from(PHOTO)
                .where(PHOTO.ID.eq(id), column(subject).isNotNull(), PHOTO.REMOVED_AT.isNull())
                .fetchOptional(PHOTO.JPEG);
    }

    /** Takes a picture out for good; what stays is its id, and who took it out when. */
    void remove(PhotoSubject subject, Photo photo, UUID by) {
        database.sql().transaction(inside -> {
            int removed = inside.dsl()
                    .update(PHOTO)
                    .set(PHOTO.JPEG, new byte[0])
                    .set(PHOTO.REMOVED_BY, by)
                    .set(PHOTO.REMOVED_AT, audit.now())
                    .where(PHOTO.ID.eq(photo.id()), PHOTO.REMOVED_AT.isNull())
                    .execute();
            if (removed > 0) {
                audit.write(
                        inside.dsl(),
                        by,
                        "take photo out",
                        subject.word(),
                        photo.of(),
                        photo.id().toString());
            }
        });
    }
}
