package warmshelf.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Base64;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.jspecify.annotations.Nullable;

/**
 * A cookie that tells that somebody has signed in on this device before, so that strangers who guess at a name elsewhere do not
 * keep its owner out. It opens nothing. It is signed with the kept hash of the passphrase, which nobody outside has, over the
 * member's name, so that it fits one member only and ends with that passphrase.
 */
public final class KnownDevice {
    private static final String NAME = "warmshelf-device";
    public static final Duration KEPT_BY_BROWSER = Duration.ofDays(400);
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final Base64.Encoder TEXT = Base64.getUrlEncoder().withoutPadding();
    private static final int NONCE_BYTES = 16;

    private final boolean https;

    KnownDevice(boolean https) {
        this.https = https;
    }

    /** @param name the member's, as {@link #of} gets it later */
    void remember(Context ctx, String name, String passphraseHash) {
        byte[] bytes = new byte[NONCE_BYTES];
        RANDOM.nextBytes(bytes);
        String nonce = TEXT.encodeToString(bytes);
        String value = nonce + "." + signature(nonce, name, passphraseHash);
        ctx.cookie(cookie(value, (int) KEPT_BY_BROWSER.toSeconds()));
    }

    void forget(Context ctx) {
        ctx.cookie(cookie("", 0));
    }

    private Cookie cookie(String value, int seconds) {
        return new Cookie(NAME, value, "/", seconds, https, true, null, SameSite.STRICT);
    }

    /** What tells this device from others, where a member has signed in on it. */
    Optional<String> of(Context ctx, String name, @Nullable String passphraseHash) {
        String value = ctx.cookie(NAME);
        int dot = value == null ? -1 : value.indexOf('.');
        if (value == null || dot < 0 || passphraseHash == null) {
            return Optional.empty();
        }
        String nonce = value.substring(0, dot);
        byte[] given = value.substring(dot + 1).getBytes(StandardCharsets.UTF_8);
        byte[] right = signature(nonce, name, passphraseHash).getBytes(StandardCharsets.UTF_8);
        return MessageDigest.isEqual(given, right) ? Optional.of(nonce) : Optional.empty();
    }

    private static String signature(String nonce, String name, String passphraseHash) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(passphraseHash.getBytes(StandardCharsets.UTF_8), "HmacSHA256"));
            return TEXT.encodeToString(mac.doFinal((nonce + "." + name).getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException neverHappens) {
            // every Java has HmacSHA256
            throw new IllegalStateException(neverHappens);
        }
    }
}
