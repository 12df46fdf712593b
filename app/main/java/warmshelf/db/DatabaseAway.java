package warmshelf.db;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Tells a database that cannot be reached just now, or has no connection left, from a fault: it may be tried again later. */
public final class DatabaseAway {
    /** Class 08 of the SQL standard: the connection. */
    private static final String CONNECTION = "08";
    /** PostgreSQL: shut down by an operator, crashed, still starting; too many connections (its handbook, appendix A). */
    private static final Set<String> SHUT_OR_FULL = Set.of("57P01", "57P02", "57P03", "53300");

    private DatabaseAway() {}

    public static boolean tellsOf(Throwable trouble) {
        for (Throwable cause = trouble; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLTransientConnectionException
                    || (cause instanceof SQLException refusal && isAway(refusal.getSQLState()))) {
                return true;
            }
        }
        return false;
    }

    private static boolean isAway(@Nullable String state) {
        return state != null && (state.startsWith(CONNECTION) || SHUT_OR_FULL.contains(state));
    }
}
