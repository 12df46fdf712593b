package warmshelf.shelf;

import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.STAY;

import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.TableField;
import warmshelf.db.generated.tables.records.PlaceRecord;

/** Keeps as many places as a mat or a lit shelf offers. */
final class PlaceStore {
    private final String kind;
    private final TableField<PlaceRecord, UUID> owner;

    /**
     * For one kind of place.
     *
     * @param owner the column that names what the place is on
     */
    PlaceStore(String kind, TableField<PlaceRecord, UUID> owner) {
        this.kind = kind;
        this.owner = owner;
    }

    /** Whether something lies, lay or will lie on a place that would go. */
    boolean usedBeyond(DSLContext transaction, UUID ownerId, int places) {
        return transaction.fetchExists(transaction
                .selectOne()
                .from(STAY)
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .where(owner.eq(ownerId), PLACE.NUMBER.gt(places)));
    }

    /** Adds the places that are missing and takes away those beyond the number. */
    void fit(DSLContext transaction, UUID ownerId, int places) {
        transaction
                .deleteFrom(PLACE)
                .where(owner.eq(ownerId), PLACE.NUMBER.gt(places))
                .execute();
        int present = transaction.fetchCount(PLACE, owner.eq(ownerId));
        for (int number = present + 1; number <= places; number++) {
            transaction
                    .insertInto(PLACE)
                    .set(PLACE.ID, UUID.randomUUID())
                    .set(PLACE.KIND, kind)
                    .set(owner, ownerId)
                    .set(PLACE.NUMBER, number)
                    .execute();
        }
    }
}
