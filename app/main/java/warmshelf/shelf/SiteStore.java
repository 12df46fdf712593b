package warmshelf.shelf;

import static warmshelf.db.generated.Tables.SITE;

import java.math.BigDecimal;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;
import warmshelf.decision.Decision;

/** Adds and changes sites. */
public final class SiteStore {
    private final DSLContext sql;
    private final Audit audit;

    public SiteStore(DSLContext sql, Audit audit) {
        this.sql = sql;
        this.audit = audit;
    }

    public Decision<UUID> add(SiteDraft draft, UUID by) {
        UUID id = UUID.randomUUID();
        return EditStore.make(sql, new ShelfRefusal.SiteNameTaken(draft.name()), transaction -> {
            transaction
                    .insertInto(SITE)
                    .set(SITE.ID, id)
                    .set(SITE.NAME, draft.name())
                    .set(SITE.WALK_ORDER, draft.walkOrder())
                    .set(SITE.CIRCUIT_AMPS, BigDecimal.valueOf(draft.circuit().amps()))
                    .set(SITE.CIRCUIT_VOLTS, draft.circuit().volts())
                    .set(SITE.NOTE, draft.note())
                    .set(SITE.VERSION, 1)
                    .execute();
            audit.write(transaction, by, "add", "site", id, draft.toString());
            return id;
        });
    }

    public Decision<UUID> change(UUID id, int version, SiteDraft draft, UUID by) {
        return EditStore.make(sql, new ShelfRefusal.SiteNameTaken(draft.name()), transaction -> {
            int changed = transaction
                    .update(SITE)
                    .set(SITE.NAME, draft.name())
                    .set(SITE.WALK_ORDER, draft.walkOrder())
                    .set(SITE.CIRCUIT_AMPS, BigDecimal.valueOf(draft.circuit().amps()))
                    .set(SITE.CIRCUIT_VOLTS, draft.circuit().volts())
                    .set(SITE.NOTE, draft.note())
                    .set(SITE.VERSION, version + 1)
                    .where(SITE.ID.eq(id), SITE.VERSION.eq(version))
                    .execute();
            EditStore.mustHaveChanged(changed);
            audit.write(transaction, by, "change", "site", id, draft.toString());
            return id;
        });
    }
}
