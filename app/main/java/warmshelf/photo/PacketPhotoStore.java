package warmshelf.photo;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PACKET_PHOTO;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.seed.PacketPictures;

/** Keeps pictures of packets with their lots. */
public final class PacketPhotoStore implements PacketPictures {
    /** Its front and its back. */
    static final int MOST_OF_LOT = 2;

    private final Database database;
    private final Audit audit;

    public PacketPhotoStore(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /**
     * Keeps a picture once, however often it is sent; it is on the disk before this returns.
     *
     * @return false when the lot has as many as it may have, or the id was used for another lot
     */
    boolean add(UUID id, UUID lot, Picture picture, UUID by) {
        boolean kept = database.sql().transactionResult(inside -> add(inside.dsl(), id, lot, picture, by));
        database.flush();
        return kept;
    }

    private boolean add(DSLContext tx, UUID id, UUID lot, Picture picture, UUID by) {
        // Held, so that two pictures sent at once are counted one after the other.
        tx.select(LOT.ID).from(LOT).where(LOT.ID.eq(lot)).forUpdate().fetchSingle();
        Optional<UUID> before = tx.select(PACKET_PHOTO.LOT_ID)
                .from(PACKET_PHOTO)
                .where(PACKET_PHOTO.ID.eq(id))
                .fetchOptional(PACKET_PHOTO.LOT_ID);
        if (before.isPresent()) {
            return before.get().equals(lot);
        }
        if (tx.fetchCount(PACKET_PHOTO, PACKET_PHOTO.LOT_ID.eq(lot).and(PACKET_PHOTO.REMOVED_AT.isNull()))
                >= MOST_OF_LOT) {
            return false;
        }
        tx.insertInto(PACKET_PHOTO)
                .set(PACKET_PHOTO.ID, id)
                .set(PACKET_PHOTO.LOT_ID, lot)
                .set(PACKET_PHOTO.WIDTH, picture.width())
                .set(PACKET_PHOTO.HEIGHT, picture.height())
                .set(PACKET_PHOTO.JPEG, picture.jpeg())
                .set(PACKET_PHOTO.ADDED_BY, by)
                .set(PACKET_PHOTO.ADDED_AT, audit.now())
                .execute();
        audit.write(tx, by, "add photo", "lot", lot, picture.jpeg().length + " bytes");
        return true;
    }

    @Override
    public List<PacketPicture> of(UUID lotId) {
        return pictures(PACKET_PHOTO.LOT_ID.eq(lotId));
    }

    Optional<PacketPicture> find(UUID id) {
        return pictures(PACKET_PHOTO.ID.eq(id)).stream().findFirst();
    }

    private List<PacketPicture> pictures(Condition which) {
        return database.sql()
                .select(
                        PACKET_PHOTO.ID,
                        PACKET_PHOTO.LOT_ID,
                        PACKET_PHOTO.WIDTH,
                        PACKET_PHOTO.HEIGHT,
                        PACKET_PHOTO.ADDED_BY,
                        MEMBER.NAME)
                .from(PACKET_PHOTO)
                .join(MEMBER)
                .on(MEMBER.ID.eq(PACKET_PHOTO.ADDED_BY))
                .where(which, PACKET_PHOTO.REMOVED_AT.isNull())
                .orderBy(PACKET_PHOTO.ADDED_AT, PACKET_PHOTO.ID)
                .fetch(PacketPhotoStore::picture);
    }

    private static PacketPicture picture(Record row) {
        return new PacketPicture(
                row.get(PACKET_PHOTO.ID),
                row.get(PACKET_PHOTO.LOT_ID),
                row.get(PACKET_PHOTO.WIDTH),
                row.get(PACKET_PHOTO.HEIGHT),
                row.get(PACKET_PHOTO.ADDED_BY),
                row.get(MEMBER.NAME));
    }

    Optional<byte[]> jpeg(UUID id) {
        return database.sql()
                .select(PACKET_PHOTO.JPEG)
                .from(PACKET_PHOTO)
                .where(PACKET_PHOTO.ID.eq(id), PACKET_PHOTO.REMOVED_AT.isNull())
                .fetchOptional(PACKET_PHOTO.JPEG);
    }

    /** Takes a picture out for good; what stays is its id, and who took it out when. */
    void remove(PacketPicture picture, UUID by) {
        database.sql().transaction(inside -> {
            int removed = inside.dsl()
                    .update(PACKET_PHOTO)
                    .set(PACKET_PHOTO.JPEG, new byte[0])
                    .set(PACKET_PHOTO.REMOVED_BY, by)
                    .set(PACKET_PHOTO.REMOVED_AT, audit.now())
                    .where(PACKET_PHOTO.ID.eq(picture.id()), PACKET_PHOTO.REMOVED_AT.isNull())
                    .execute();
            if (removed > 0) {
                audit.write(
                        inside.dsl(),
                        by,
                        "take photo out",
                        "lot",
                        picture.lotId(),
                        picture.id().toString());
            }
        });
    }
}
