package warmshelf.shelf;

import static warmshelf.db.generated.Tables.QUARANTINE_SHELF;

import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;

/** Keeps which shelves are for what comes from outside, and for what has pests; nothing is planned or offered there. */
public final class QuarantineStore {
    private final DSLContext sql;
    private final Audit audit;

    public QuarantineStore(DSLContext sql, Audit audit) {
        this.sql = sql;
        this.audit = audit;
    }

    public Set<UUID> shelves() {
        return Set.copyOf(
                sql.select(QUARANTINE_SHELF.SHELF_ID).from(QUARANTINE_SHELF).fetch(QUARANTINE_SHELF.SHELF_ID));
    }

    /** Names a shelf so, or no longer; said twice it stays as it is. */
    public void name(UUID shelf, boolean quarantine, UUID by) {
        sql.transaction(inside -> {
            DSLContext tx = inside.dsl();
            int changed = quarantine
                    ? tx.insertInto(QUARANTINE_SHELF)
                            .set(QUARANTINE_SHELF.SHELF_ID, shelf)
                            .set(QUARANTINE_SHELF.MADE_BY, by)
                            .set(QUARANTINE_SHELF.MADE_AT, audit.now())
                            .onConflictDoNothing()
                            .execute()
                    : tx.deleteFrom(QUARANTINE_SHELF)
                            .where(QUARANTINE_SHELF.SHELF_ID.eq(shelf))
                            .execute();
            if (changed > 0) {
                audit.write(tx, by, quarantine ? "name quarantine" : "end quarantine", "shelf", shelf, "");
            }
        });
    }
}
