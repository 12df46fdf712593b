package warmshelf.group;

import org.jspecify.annotations.Nullable;

/** Where to go after signing in: a page here, never another site. */
public final class LocalPath {
    static final String HOME = "/";

    private LocalPath() {}

    /** The wanted path, or home when it leads anywhere else. */
    public static String orHome(@Nullable String wanted) {
        return wanted != null && isLocal(wanted) ? wanted : HOME;
    }

    private static boolean isLocal(String path) {
        // '//host' and '/\host' are other sites to a browser.
        return path.startsWith("/")
                && !path.startsWith("//")
                && path.indexOf('\\') < 0
                && path.length() <= 500
                && path.chars().allMatch(c -> c > ' ' && c != 127);
    }
}
