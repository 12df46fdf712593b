package warmshelf.archive;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4). */
final class Digests {
    private Digests() {}

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException neverHappens) {
            throw new IllegalStateException("each Java has SHA-256", neverHappens);
        }
    }

    /** In hexadecimal digits; the digest is as new afterwards. */
    static String hex(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest());
    }
}
