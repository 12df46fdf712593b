package warmshelf.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;

/** The cookie that tells who ticks on a tablet at a rack, until nobody has ticked for a while. It opens nothing. */
public final class LookerCookie {
    /** After so long without a tick it is anybody's guess who stands there. */
    public static final Duration IDLE = Duration.ofMinutes(10);

    private static final String NAME = "warmshelf-looker";

    private final boolean https;

    public LookerCookie(boolean https) {
        this.https = https;
    }

    public Optional<UUID> read(Context ctx) {
        String value = ctx.cookie(NAME);
        try {
            return value == null ? Optional.empty() : Optional.of(UUID.fromString(value));
        } catch (IllegalArgumentException notOurs) {
            return Optional.empty();
        }
    }

    public void set(Context ctx, UUID who) {
        ctx.cookie(cookie(who.toString(), (int) IDLE.toSeconds()));
    }

    public void clear(Context ctx) {
        ctx.cookie(cookie("", 0));
    }

    private Cookie cookie(String value, int seconds) {
        return new Cookie(NAME, value, "/", seconds, https, true, null, SameSite.STRICT);
    }
}
