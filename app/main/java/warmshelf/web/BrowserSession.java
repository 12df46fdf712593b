package warmshelf.web;

import io.javalin.http.Context;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A browser's session as the pages see it: handing it out, ending it, and where the browser is. */
public final class BrowserSession {
    private final Doors doors;
    private final SessionCookie cookie;
    private final KnownDevice device;
    private final ClientAddress address;
    private final @Nullable String baseUrl;

    public BrowserSession(Doors doors, WebSettings settings) {
        this.doors = doors;
        this.cookie = new SessionCookie(settings.https());
        this.device = new KnownDevice(settings.https());
        this.address = new ClientAddress(new TrustedProxies(settings.trustedProxies()));
        this.baseUrl = settings.baseUrl();
    }

    /** A page's whole address, to be given to somebody else. */
    public String wholeAddress(Context ctx, String path) {
        return base(ctx) + path;
    }

    /** The address with which {@link #wholeAddress} begins, where no other device can open it; empty where others can. */
    public Optional<String> addressOfThisMachineOnly(Context ctx) {
        return Optional.of(base(ctx)).filter(OwnAddress::isOfThisMachineOnly);
    }

    private String base(Context ctx) {
        return baseUrl == null ? ctx.scheme() + "://" + ctx.host() : baseUrl;
    }

    /** Where the request comes from, as far as it can be known. */
    public String address(Context ctx) {
        return address.of(ctx);
    }

    /** Gives the browser its new session; the one it held before ends, so no token outlives a sign-in. */
    public void letIn(Context ctx, String sessionToken) {
        end(ctx);
        cookie.set(ctx, sessionToken);
    }

    /** Remembers that a member came in by passphrase here. */
    public void remember(Context ctx, String name, String passphraseHash) {
        device.remember(ctx, name, passphraseHash);
    }

    /** What tells this device from others, where the member with that passphrase has come in by it before. */
    public Optional<String> knownDevice(Context ctx, String name, @Nullable String passphraseHash) {
        return device.of(ctx, name, passphraseHash);
    }

    public void signOut(Context ctx) {
        end(ctx);
        cookie.clear(ctx);
    }

    /** Takes from the browser all that it was given of a member, whose sessions are over. */
    public void forget(Context ctx) {
        cookie.clear(ctx);
        device.forget(ctx);
    }

    private void end(Context ctx) {
        @Nullable String token = cookie.read(ctx);
        if (token != null) {
            Visitor.maybe(ctx).ifPresent(visitor -> doors.end(token, visitor.memberId()));
        }
    }
}
