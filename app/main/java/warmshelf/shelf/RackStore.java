package warmshelf.shelf;

import static warmshelf.db.generated.Tables.RACK;

import java.util.UUID;
import org.jooq.DSLContext;
import warmshelf.db.Audit;

/** Adds and changes the racks of a site. */
public final class RackStore {
    private final DSLContext sql;
    private final Audit audit;

    public RackStore(DSLContext sql, Audit audit) {
        this.sql = sql;
        this.audit = audit;
    }

    public EditOutcome add(UUID siteId, RackDraft draft, UUID by) {
        UUID id = UUID.randomUUID();
        return EditStore.make(sql, nameTaken(draft), transaction -> {
            transaction
                    .insertInto(RACK)
                    .set(RACK.ID, id)
                    .set(RACK.SITE_ID, siteId)
                    .set(RACK.NAME, draft.name())
                    .set(RACK.WALK_ORDER, draft.walkOrder())
                    .set(RACK.VERSION, 1)
                    .execute();
            audit.write(transaction, by, "add", "rack", id, draft.toString());
            return new EditOutcome.Saved(id);
        });
    }

    public EditOutcome change(UUID id, int version, RackDraft draft, UUID by) {
        return EditStore.make(sql, nameTaken(draft), transaction -> {
            int changed = transaction
                    .update(RACK)
                    .set(RACK.NAME, draft.name())
                    .set(RACK.WALK_ORDER, draft.walkOrder())
                    .set(RACK.VERSION, version + 1)
                    .where(RACK.ID.eq(id), RACK.VERSION.eq(version))
                    .execute();
            if (changed == 0) {
                return new EditOutcome.ChangedMeanwhile();
            }
            audit.write(transaction, by, "change", "rack", id, draft.toString());
            return new EditOutcome.Saved(id);
        });
    }

    private static EditOutcome.Refused nameTaken(RackDraft draft) {
        return new EditOutcome.Refused(
                "name",
                "Name of the rack was '%s'; another rack of this site has that name, please choose a different one."
                        .formatted(draft.name()));
    }
}
