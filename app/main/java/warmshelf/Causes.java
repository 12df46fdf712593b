package warmshelf;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/** Looks for the reason behind an exception. */
final class Causes {
    private Causes() {}

    static boolean has(@Nullable Throwable trouble, Class<? extends Throwable> kind) {
        for (Throwable cause = trouble; cause != null; cause = cause.getCause()) {
            if (kind.isInstance(cause)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a database said no with this error code of its own. */
    static boolean hasSqlError(@Nullable Throwable trouble, int errorCode) {
        for (Throwable cause = trouble; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException refused && refused.getErrorCode() == errorCode) {
                return true;
            }
        }
        return false;
    }
}
