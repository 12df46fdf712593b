package warmshelf.shelf;

import java.util.UUID;
import java.util.function.Function;
import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;

/** Makes a change to a site, rack, shelf or mat, of which the database keeps no two of a name. */
final class EditStore {
    private static final String UNIQUE_VIOLATION = "23505";

    private EditStore() {}

    /**
     * Makes a change in one transaction.
     *
     * @param ifTaken why not, when the database holds another of the same name or level
     * @param change returns the id of what was added or changed
     */
    static Decision<UUID> make(DSLContext sql, ShelfRefusal ifTaken, Function<DSLContext, UUID> change) {
        return Decision.of(() -> {
            try {
                return sql.transactionResult(configuration -> change.apply(configuration.dsl()));
            } catch (IntegrityConstraintViolationException taken) {
                if (UNIQUE_VIOLATION.equals(taken.sqlState())) {
                    throw Declined.refused(ifTaken);
                }
                throw taken;
            }
        });
    }

    /** A change of one version of something found it. */
    static void mustHaveChanged(int rows) {
        if (rows == 0) {
            throw Declined.overtaken(new ShelfRefusal.ChangedMeanwhile());
        }
    }
}
