package warmshelf;

import org.jspecify.annotations.Nullable;

/** Looks for the reason behind an exception. */
public final class Causes {
    private Causes() {}

    public static boolean has(Throwable trouble, Class<? extends Throwable> kind) {
        return find(trouble, kind) != null;
    }

    /** The deepest cause of a kind, which knows best; null when there is none. */
    public static <T extends Throwable> @Nullable T find(Throwable trouble, Class<T> kind) {
        T found = null;
        for (Throwable cause = trouble; cause != null; cause = cause.getCause()) {
            if (kind.isInstance(cause)) {
                found = kind.cast(cause);
            }
        }
        return found;
    }
}
