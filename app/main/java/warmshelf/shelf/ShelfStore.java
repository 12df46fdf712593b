package warmshelf.shelf;

import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.SHELF;

import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import warmshelf.db.Audit;
import warmshelf.db.generated.tables.records.ShelfRecord;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;

/** Adds and changes the shelves of a rack, with their places under light. */
public final class ShelfStore {
    private static final PlaceStore PLACES = new PlaceStore("lit", PLACE.LIT_SHELF_ID);

    /** A level that no rack has. */
    private static final int ON_THE_WAY = 1_000;

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

    /** Changes it; a shelf that stands at its new level changes places with it. */
    public Decision<UUID> change(UUID id, int version, ShelfDraft draft, UUID by) {
        return EditStore.make(sql, new ShelfRefusal.LevelTaken(draft.fromTop()), transaction -> {
            if (PLACES.usedBeyond(transaction, id, draft.litPlaces())) {
                throw Declined.refused(new ShelfRefusal.LitPlacesUsed(draft.litPlaces()));
            }
            Optional<UUID> away = makeRoom(transaction, id, draft.fromTop());
            int level = transaction
                    .fetchOptional(SHELF, SHELF.ID.eq(id))
                    .map(ShelfRecord::getFromTop)
                    .orElse(0);
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
            away.ifPresent(other -> stand(transaction, other, level));
            PLACES.fit(transaction, id, draft.litPlaces());
            audit.write(transaction, by, "change", "shelf", id, draft.toString());
            return id;
        });
    }

    /** Takes another shelf of the rack from a level, for as long as this one is on its way there. */
    private static Optional<UUID> makeRoom(DSLContext transaction, UUID id, int level) {
        Optional<UUID> other = transaction
                .select(SHELF.ID)
                .from(SHELF)
                .where(
                        SHELF.ID.ne(id),
                        SHELF.FROM_TOP.eq(level),
                        SHELF.RACK_ID.eq(DSL.select(SHELF.as("own").RACK_ID)
                                .from(SHELF.as("own"))
                                .where(SHELF.as("own").ID.eq(id))))
                .fetchOptional(SHELF.ID);
        other.ifPresent(each -> stand(transaction, each, ON_THE_WAY));
        return other;
    }

    private static void stand(DSLContext transaction, UUID shelf, int level) {
        transaction
                .update(SHELF)
                .set(SHELF.FROM_TOP, level)
                .set(SHELF.VERSION, SHELF.VERSION.plus(1))
                .where(SHELF.ID.eq(shelf))
                .execute();
    }
}
