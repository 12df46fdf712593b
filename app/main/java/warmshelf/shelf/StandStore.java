package warmshelf.shelf;

import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SITE;

import java.math.BigDecimal;
import java.util.UUID;
import java.util.function.Function;
import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;
import warmshelf.db.Audit;

/** Changes sites and the racks that stand there. */
public final class StandStore {
    private static final String UNIQUE_VIOLATION = "23505";

    private final DSLContext sql;
    private final Audit audit;

    public StandStore(DSLContext sql, Audit audit) {
        this.sql = sql;
        this.audit = audit;
    }

    public EditOutcome addSite(SiteDraft draft, UUID by) {
        UUID id = UUID.randomUUID();
        return within(siteNameTaken(draft), transaction -> {
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
            return new EditOutcome.Saved(id);
        });
    }

    public EditOutcome changeSite(UUID id, int version, SiteDraft draft, UUID by) {
        return within(siteNameTaken(draft), transaction -> {
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
            if (changed == 0) {
                return new EditOutcome.ChangedMeanwhile();
            }
            audit.write(transaction, by, "change", "site", id, draft.toString());
            return new EditOutcome.Saved(id);
        });
    }

    public EditOutcome addRack(UUID siteId, RackDraft draft, UUID by) {
        UUID id = UUID.randomUUID();
        return within(rackNameTaken(draft), transaction -> {
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

    public EditOutcome changeRack(UUID id, int version, RackDraft draft, UUID by) {
        return within(rackNameTaken(draft), transaction -> {
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

    private static EditOutcome.Refused siteNameTaken(SiteDraft draft) {
        return new EditOutcome.Refused(
                "name",
                "Name of the site was '%s'; another site has that name, please choose a different one."
                        .formatted(draft.name()));
    }

    private static EditOutcome.Refused rackNameTaken(RackDraft draft) {
        return new EditOutcome.Refused(
                "name",
                "Name of the rack was '%s'; another rack of this site has that name, please choose a different one."
                        .formatted(draft.name()));
    }

    private EditOutcome within(EditOutcome.Refused ifTaken, Function<DSLContext, EditOutcome> change) {
        return within(sql, ifTaken, change);
    }

    /** Runs a change in one transaction; the database's own rule against two of a name becomes an answer. */
    static EditOutcome within(DSLContext sql, EditOutcome.Refused ifTaken, Function<DSLContext, EditOutcome> change) {
        try {
            return sql.transactionResult(configuration -> change.apply(configuration.dsl()));
        } catch (IntegrityConstraintViolationException taken) {
            if (UNIQUE_VIOLATION.equals(taken.sqlState())) {
                return ifTaken;
            }
            throw taken;
        }
    }
}
