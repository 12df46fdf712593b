package warmshelf.web;

import io.javalin.http.Context;

/** What every answer tells the browser to forbid. */
final class SecurityHeaders {
    private static final String CONTENT_POLICY = String.join(
            "; ",
            "default-src 'none'",
            "object-src 'none'",
            "script-src 'self'",
            "style-src 'self'",
            "img-src 'self' data:",
            "connect-src 'self'",
            "font-src 'self'",
            "form-action 'self'",
            "base-uri 'none'",
            "frame-ancestors 'none'",
            "manifest-src 'self'",
            "worker-src 'self'");

    private final boolean https;

    SecurityHeaders(boolean https) {
        this.https = https;
    }

    void put(Context ctx) {
        ctx.header("Content-Security-Policy", CONTENT_POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Permissions-Policy", "camera=(), geolocation=(), microphone=(), payment=(), usb=()");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        // Pages are personal; the assets' handler replaces this for what everybody may keep.
        ctx.header("Cache-Control", "no-store");
        if (https) {
            ctx.header("Strict-Transport-Security", "max-age=31536000");
        }
    }
}
