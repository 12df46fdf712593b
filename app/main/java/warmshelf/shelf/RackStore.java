package warmshelf.shelf;

import static warmshelf.db.generated.Tables.RACK;

import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.decision.Decision;

/** Adds and changes the racks of a site. */
public final class RackStore {
    private final DSLContext sql;
    private final Audit audit;

    public RackStore(DSLContext sql, Audit audit) {
        this.sql = sql;
        this.audit = audit;
    }

    public Decision<UUID> add(UUID siteId, RackDraft draft, UUID by) {
        UUID id = UUID.randomUUID();
        return EditStore.make(sql, new ShelfRefusal.RackNameTaken(draft.name()), transaction -> {
            transaction
                    .insertInto(RACK)
                    .set(RACK.ID, id)
                    .set(RACK.SITE_ID, siteId)
                    .set(RACK.NAME, draft.name())
                    .set(RACK.WALK_ORDER, draft.walkOrder())
                    .set(RACK.VERSION, 1)
                    .execute();
            audit.write(transaction, by, "add", "rack", id, draft.toString());
            return id;
        });
    }

    /** Adds a rack with its shelves and mats, all or nothing. */
    public Decision<UUID> add(UUID siteId, NewRack draft, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            UUID rack = new RackStore(tx, audit).add(siteId, draft.rack(), by).orDecline();
            ShelfStore shelves = new ShelfStore(tx, audit);
            MatStore mats = new MatStore(tx, audit);
            for (NewRack.NewShelf shelf : draft.shelves()) {
                UUID id = shelves.add(rack, shelf.shelf(), by).orDecline();
                shelf.mats().forEach(mat -> mats.add(id, mat, by).orDecline());
            }
            return rack;
        }));
    }

    /** Changes it, or moves it to another site with all that lies on it. */
    public Decision<UUID> change(UUID id, int version, RackDraft draft, UUID site, UUID by) {
        return EditStore.make(sql, new ShelfRefusal.RackNameTaken(draft.name()), transaction -> {
            int changed = transaction
                    .update(RACK)
                    .set(RACK.SITE_ID, site)
                    .set(RACK.NAME, draft.name())
                    .set(RACK.WALK_ORDER, draft.walkOrder())
                    .set(RACK.VERSION, version + 1)
                    .where(RACK.ID.eq(id), RACK.VERSION.eq(version))
                    .execute();
            EditStore.mustHaveChanged(changed);
            audit.write(transaction, by, "change", "rack", id, draft + " at " + site);
            return id;
        });
    }
}
