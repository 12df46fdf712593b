package warmshelf.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.jspecify.annotations.Nullable;

/** A message that survives one redirect and is shown once. It lives in the browser, so any node can show it. */
public final class Notice {
    private static final String COOKIE = "warmshelf-notice";
    private static final int SECONDS = 60;

    private Notice() {}

    public static void leave(Context ctx, String sentence) {
        String value = Base64.getUrlEncoder().withoutPadding().encodeToString(sentence.getBytes(StandardCharsets.UTF_8));
        ctx.cookie(cookie(value, SECONDS));
    }

    /** The message left by the page before, which is thereby used up. */
    static @Nullable String take(Context ctx) {
        String value = ctx.cookie(COOKIE);
        if (value == null) {
            return null;
        }
        ctx.cookie(cookie("", 0));
        try {
            return new String(Base64.getUrlDecoder().decode(value), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException notOurs) {
            return null;
        }
    }

    private static Cookie cookie(String value, int seconds) {
        return new Cookie(COOKIE, value, "/", seconds, false, true, null, SameSite.LAX);
    }
}
