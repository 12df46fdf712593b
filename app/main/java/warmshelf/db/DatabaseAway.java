package warmshelf.db;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.Set;
import org.h2.mvstore.DataUtils;
import org.h2.mvstore.MVStoreException;
import org.jspecify.annotations.Nullable;

/** Tells a database that cannot be reached just now, has no connection left, has become a standby, has closed itself, or finds no room, from a fault: it may be tried again later. */
public final class DatabaseAway {
    /** Class 08 of the SQL standard: the connection. */
    private static final String CONNECTION = "08";
    /** PostgreSQL: a write on a server that only reads, as a primary does that has become a standby (its handbook, appendix A). */
    static final String READ_ONLY = "25006";
    /** PostgreSQL: shut down by an operator, crashed, still starting; too many connections; a standby now. */
    private static final Set<String> SHUT_OR_FULL = Set.of("57P01", "57P02", "57P03", "53300", READ_ONLY);

    private static final Set<Integer> FAILED_OR_CLOSED = Set.of(DataUtils.ERROR_WRITING_FAILED, DataUtils.ERROR_CLOSED);

    private DatabaseAway() {}

    public static boolean tellsOf(Throwable trouble) {
        for (Throwable cause = trouble; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLTransientConnectionException
                    || (cause instanceof MVStoreException file && FAILED_OR_CLOSED.contains(file.getErrorCode()))
                    || (cause instanceof SQLException refusal
                            && (isAway(refusal.getSQLState()) || DiskGuard.isClosed(refusal.getErrorCode())))) {
                return true;
            }
        }
        return false;
    }

    private static boolean isAway(@Nullable String state) {
        return state != null && (state.startsWith(CONNECTION) || SHUT_OR_FULL.contains(state));
    }
}
