package warmshelf.shelf;

import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.SHELF;

import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;

/** Adds and changes the shelves of a rack, with their places under light. */
public final class ShelfStore {
    private static final PlaceStore PLACES = new PlaceStore("lit", PLACE.LIT_SHELF_ID);

    private final DSLContext sql;
    private final Audit audit;

    public ShelfStore(DSLContext sql, Audit audit) {
        this.sql = sql;
        this.audit = audit;
    }

    public Decision<UUID> add(UUID rackId, ShelfDraft draft, UUID by) {
        UUID id = UUID.randomUUID();
        return EditStore.make(sql, new ShelfRefusal.LevelTaken(draft.fromTop()), transaction -> {
            transaction
                    .insertInto(SHELF)
                    .set(SHELF.ID, id)
                    .set(SHELF.RACK_ID, rackId)
                    .set(SHELF.FROM_TOP, draft.fromTop())
                    .set(SHELF.LIT_PLACES, draft.litPlaces())
                    .set(SHELF.LIGHT_WATTS, draft.lightWatts())
                    .set(SHELF.LAMP, draft.lamp().kind().kept())
                    .set(SHELF.LAMP_HOURS, draft.lamp().hours())
                    .set(SHELF.LAMP_TIMER, draft.lamp().timer())
                    .set(SHELF.VERSION, 1)
                    .execute();
            PLACES.fit(transaction, id, draft.litPlaces());
            audit.write(transaction, by, "add", "shelf", id, draft.toString());
            return id;
        });
    }

    public Decision<UUID> change(UUID id, int version, ShelfDraft draft, UUID by) {
        return EditStore.make(sql, new ShelfRefusal.LevelTaken(draft.fromTop()), transaction -> {
            if (PLACES.usedBeyond(transaction, id, draft.litPlaces())) {
                throw Declined.refused(new ShelfRefusal.LitPlacesUsed(draft.litPlaces()));
            }
            int changed = transaction
                    .update(SHELF)
                    .set(SHELF.FROM_TOP, draft.fromTop())
                    .set(SHELF.LIT_PLACES, draft.litPlaces())
                    .set(SHELF.LIGHT_WATTS, draft.lightWatts())
                    .set(SHELF.LAMP, draft.lamp().kind().kept())
                    .set(SHELF.LAMP_HOURS, draft.lamp().hours())
                    .set(SHELF.LAMP_TIMER, draft.lamp().timer())
                    .set(SHELF.VERSION, version + 1)
                    .where(SHELF.ID.eq(id), SHELF.VERSION.eq(version))
                    .execute();
            EditStore.mustHaveChanged(changed);
            PLACES.fit(transaction, id, draft.litPlaces());
            audit.write(transaction, by, "change", "shelf", id, draft.toString());
            return id;
        });
    }
}
