package warmshelf.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** The cookie that carries a session's token. Behind https it is bound to this host and never sent in the clear. */
public final class SessionCookie {
    /** How long a session lasts without a visit. */
    public static final Duration LIFE = Duration.ofDays(30);

    // Each visit prolongs the session, but not the cookie, which is set once: it has to outlast many sessions. 400 days
    // is
    // the longest that browsers keep one; whether the session still runs is for the server to say.
    private static final Duration KEPT_BY_BROWSER = Duration.ofDays(400);

    private final boolean https;

    public SessionCookie(boolean https) {
        this.https = https;
    }

    public @Nullable String read(Context ctx) {
        return ctx.cookie(name());
    }

    public void set(Context ctx, String token) {
        ctx.cookie(cookie(token, (int) KEPT_BY_BROWSER.toSeconds()));
    }

    public void clear(Context ctx) {
        ctx.cookie(cookie("", 0));
    }

    /** As a program that asks for a page sends it. */
    public String sent(String token) {
        return name() + "=" + token;
    }

    private String name() {
        return https ? "__Host-warmshelf" : "warmshelf";
    }

    private Cookie cookie(String value, int seconds) {
        return new Cookie(name(), value, "/", seconds, https, true, null, SameSite.LAX);
    }
}
