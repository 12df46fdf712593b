package warmshelf.db;

import com.zaxxer.hikari.SQLExceptionOverride;
import java.sql.SQLException;

/**
 * Lets the pool drop a connection whose server only reads: it was the primary and has become a standby. The next connection looks
 * for the primary anew among the hosts of the address.
 */
public final class StandbyLeft implements SQLExceptionOverride {
    @java.lang.Override
    public Override adjudicate(SQLException trouble) {
        return DatabaseAway.READ_ONLY.equals(trouble.getSQLState()) ? Override.MUST_EVICT : Override.CONTINUE_EVICT;
    }
}
