package warmshelf;

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
}
