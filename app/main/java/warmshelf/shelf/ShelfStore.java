package warmshelf.shelf;

import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.SHELF;

import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;

/** Adds and changes the shelves of a rack, with their places under light. */
public final class ShelfStore {
    private static final PlaceStore PLACES = new PlaceStore("lit", PLACE.LIT_SHELF_ID);

    private final DSLContext sql;
    private final Audit audit;

    public ShelfStore(DSLContext sql, Audit audit) {
        this.sql = sql;
        this.audit = audit;
    }

    public EditOutcome add(UUID rackId, ShelfDraft draft, UUID by) {
        UUID id = UUID.randomUUID();
        return EditStore.make(sql, levelTaken(draft), transaction -> {
            transaction
                    .insertInto(SHELF)
                    .set(SHELF.ID, id)
                    .set(SHELF.RACK_ID, rackId)
                    .set(SHELF.FROM_TOP, draft.fromTop())
                    .set(SHELF.LIT_PLACES, draft.litPlaces())
                    .set(SHELF.LIGHT_WATTS, draft.lightWatts())
                    .set(SHELF.VERSION, 1)
                    .execute();
            PLACES.fit(transaction, id, draft.litPlaces());
            audit.write(transaction, by, "add", "shelf", id, draft.toString());
            return new EditOutcome.Saved(id);
        });
    }

    public EditOutcome change(UUID id, int version, ShelfDraft draft, UUID by) {
        return EditStore.make(sql, levelTaken(draft), transaction -> {
            if (PLACES.usedBeyond(transaction, id, draft.litPlaces())) {
                return PlaceStore.used("litPlaces", "Places under light", draft.litPlaces());
            }
            int changed = transaction
                    .update(SHELF)
                    .set(SHELF.FROM_TOP, draft.fromTop())
                    .set(SHELF.LIT_PLACES, draft.litPlaces())
                    .set(SHELF.LIGHT_WATTS, draft.lightWatts())
                    .set(SHELF.VERSION, version + 1)
                    .where(SHELF.ID.eq(id), SHELF.VERSION.eq(version))
                    .execute();
            if (changed == 0) {
                return new EditOutcome.ChangedMeanwhile();
            }
            PLACES.fit(transaction, id, draft.litPlaces());
            audit.write(transaction, by, "change", "shelf", id, draft.toString());
            return new EditOutcome.Saved(id);
        });
    }

    private static EditOutcome.Refused levelTaken(ShelfDraft draft) {
        return new EditOutcome.Refused(
                "fromTop",
                "Level from the top was %d; this rack has a shelf there already, please choose another level."
                        .formatted(draft.fromTop()));
    }
}
