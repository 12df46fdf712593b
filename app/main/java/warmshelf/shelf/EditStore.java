package warmshelf.shelf;

import java.util.function.Function;
import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;

/** Makes a change to a site, rack, shelf or mat, of which the database keeps no two of a name. */
final class EditStore {
    private static final String UNIQUE_VIOLATION = "23505";

    private EditStore() {}

    /**
     * Makes a change in one transaction.
     *
     * @param ifTaken the answer when the database holds another of the same name or level
     */
    static EditOutcome make(DSLContext sql, EditOutcome.Refused ifTaken, Function<DSLContext, EditOutcome> change) {
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
