package warmshelf.web;

import io.javalin.http.Context;

/** Where a request comes from, as far as it can be known: behind a trusted reverse proxy, what that proxy says. */
public final class ClientAddress {
    private final TrustedProxies trustedProxies;

    public ClientAddress(TrustedProxies trustedProxies) {
        this.trustedProxies = trustedProxies;
    }

    public String of(Context ctx) {
        String sender = ctx.ip();
        String forwarded = ctx.header("X-Forwarded-For");
        if (forwarded == null || !trustedProxies.holds(sender)) {
            return sender;
        }
        // Only the last entry was written by the proxy itself; those before it are the visitor's own claim.
        return forwarded.substring(forwarded.lastIndexOf(',') + 1).strip();
    }
}
