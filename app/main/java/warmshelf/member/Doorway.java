package warmshelf.member;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.web.ClientAddress;
import warmshelf.web.RateLimits;
import warmshelf.web.Refusal;
import warmshelf.web.SessionCookie;
import warmshelf.web.Visitor;

/** Where people come in: by a link or by passphrase. It slows down guessing and hands out the session's cookie. */
public final class Doorway {
    private final LinkStore links;
    private final SessionStore sessions;
    private final SessionCookie cookie;
    private final RateLimits limits;
    private final ClientAddress address;
    private final Audit audit;

    public Doorway(
            LinkStore links,
            SessionStore sessions,
            SessionCookie cookie,
            RateLimits limits,
            ClientAddress address,
            Audit audit) {
        this.links = links;
        this.sessions = sessions;
        this.cookie = cookie;
        this.limits = limits;
        this.address = address;
        this.audit = audit;
    }

    /**
     * The open link whose token stands in the address.
     *
     * @throws Refusal when it is unknown, used, expired or withdrawn, or too many were tried
     */
    public Link openLink(Context ctx, LinkPurpose purpose) {
        limits.take("link from " + address.of(ctx), 40, Duration.ofSeconds(10));
        Link link = links.find(purpose, ctx.pathParam("token"))
                .orElseThrow(() -> Refusal.of(
                        HttpStatus.NOT_FOUND,
                        "This link is not known here. Check that it was copied whole, or ask for a new one."));
        if (!link.open(audit.now())) {
            throw spent(link);
        }
        return link;
    }

    /** What to say of a link that lets nobody in any more. */
    public static Refusal spent(Link link) {
        return Refusal.of(
                HttpStatus.GONE,
                link.used()
                        ? "This link has been used already; it works once only. If you have joined, sign in."
                                + " If somebody else used it, ask for a new one."
                        : "This link has expired or was withdrawn. Ask for a new one.");
    }

    /** @throws Refusal when this address, or anyone for this name, tried too often */
    void limitSignIn(Context ctx, String name) {
        limits.take("sign-in from " + address.of(ctx), 20, Duration.ofSeconds(15));
        limits.take("sign-in as " + Member.key(name), 10, Duration.ofMinutes(1));
    }

    /** Gives the browser its new session; the one it held before ends, so no token outlives a sign-in. */
    public void letIn(Context ctx, String sessionToken) {
        endSession(ctx);
        cookie.set(ctx, sessionToken);
    }

    void signOut(Context ctx) {
        endSession(ctx);
        cookie.clear(ctx);
    }

    private void endSession(Context ctx) {
        @Nullable String token = cookie.read(ctx);
        if (token != null) {
            Visitor.maybe(ctx).ifPresent(visitor -> sessions.end(token, visitor.memberId()));
        }
    }
}
