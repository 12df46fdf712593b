package warmshelf.group;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** Random words that open a session or a link. Only their hashes are stored, so a copy of the database opens nothing. */
public final class Token {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int BYTES = 32;

    private Token() {}

    /** 256 random bits as 43 letters, digits, '-' and '_'. */
    public static String random() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** SHA-256 as 64 hexadecimal digits: enough for random tokens, which cannot be guessed as passphrases can. */
    public static String hash(String token) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException absent) {
            throw new IllegalStateException("every Java has SHA-256", absent);
        }
    }
}
