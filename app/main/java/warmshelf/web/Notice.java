package warmshelf.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A message that survives one redirect and is shown once. It lives in the browser, so any node can show it. */
public final class Notice {
    private static final String SENTENCE = "warmshelf-notice";
    private static final String UNDO = "warmshelf-undo";
    private static final String LINK = "warmshelf-link";
    private static final int SECONDS = 60;
    private static final String LEFT = "warmshelf.left";
    private static final String HTTPS = "warmshelf.https";

    private Notice() {}

    /** Whether what this request leaves may be sent over https only. */
    static void overHttps(Context ctx, boolean https) {
        ctx.attribute(HTTPS, https);
    }

    public static void leave(Context ctx, String sentence) {
        leave(ctx, SENTENCE, sentence);
    }

    /** Leaves the address of a link just made, which is stored nowhere and so can be shown only now. */
    public static void leaveLink(Context ctx, String address) {
        leave(ctx, LINK, address);
    }

    /** Leaves, beside a message, the address to post to that takes the change back. */
    public static void leaveUndo(Context ctx, String address) {
        leave(ctx, UNDO, address);
    }

    /** The address that takes the last change back, which is thereby used up. */
    static @Nullable String takeUndo(Context ctx) {
        String address = take(ctx, UNDO);
        // Only a path of our own: a cookie that something else has set must not lead a form elsewhere.
        return address != null && address.startsWith("/") && !address.startsWith("//") ? address : null;
    }

    /** The message left by the page before, which is thereby used up. */
    static @Nullable String take(Context ctx) {
        return take(ctx, SENTENCE);
    }

    /** The address of the link just made, which is thereby used up. */
    public static @Nullable String takeLink(Context ctx) {
        return take(ctx, LINK);
    }

    /** What this request has left for the next page: each message by its kind. */
    static Map<String, String> left(Context ctx) {
        Map<String, String> left = ctx.attribute(LEFT);
        return left == null ? Map.of() : left;
    }

    /** Leaves a message of a kind, as {@link #left} tells it. */
    static void leave(Context ctx, String name, String text) {
        Map<String, String> left = new LinkedHashMap<>(left(ctx));
        left.put(name, text);
        ctx.attribute(LEFT, left);
        String value = Base64.getUrlEncoder().withoutPadding().encodeToString(text.getBytes(StandardCharsets.UTF_8));
        ctx.cookie(cookie(ctx, name, value, SECONDS));
    }

    private static @Nullable String take(Context ctx, String name) {
        String value = ctx.cookie(name);
        if (value == null) {
            return null;
        }
        ctx.cookie(cookie(ctx, name, "", 0));
        try {
            return new String(Base64.getUrlDecoder().decode(value), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException notOurs) {
            return null;
        }
    }

    private static Cookie cookie(Context ctx, String name, String value, int seconds) {
        boolean https = Boolean.TRUE.equals(ctx.attribute(HTTPS));
        return new Cookie(name, value, "/", seconds, https, true, null, SameSite.LAX);
    }
}
