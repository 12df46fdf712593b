package warmshelf.db;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A member's script that has sent something, while it is being answered: {@link Audit} writes by which token. As with {@link
 * Submission}, it hangs on the thread, so that what scripts may send later is written down so, too.
 */
public final class ScriptAtWork {
    private static final ThreadLocal<@Nullable String> TOKEN = new ThreadLocal<>();

    private ScriptAtWork() {}

    /** Does what a script asks for that came in by a token of this name. */
    public static <T> T answering(String tokenName, Supplier<T> work) {
        TOKEN.set(tokenName);
        try {
            return work.get();
        } finally {
            TOKEN.remove();
        }
    }

    /** The name of the token; null: no script is at work. */
    static @Nullable String tokenName() {
        return TOKEN.get();
    }
}
