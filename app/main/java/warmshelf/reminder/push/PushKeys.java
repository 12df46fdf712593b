package warmshelf.reminder.push;

import com.interaso.webpush.VapidKeys;
import java.math.BigInteger;
import java.util.Optional;

/**
 * The pair of keys by which push services know this installation (RFC 8292), and whom they can write to about it. Its text
 * never holds the private key.
 *
 * @param contact for example 'mailto:seeds@example.org'
 */
public record PushKeys(VapidKeys pair, String contact) {
    private static final int PRIVATE_BYTES = 32;

    /** A fresh pair as texts: what a group sets and keeps, because devices are bound to it. */
    public record Texts(String publicKey, String privateKey) {
        @Override
        public String toString() {
            return publicKey;
        }
    }

    /** The pair; empty when the two do not belong together. Each must be a key by {@link CurvePoint}. */
    public static Optional<PushKeys> of(String publicKey, String privateKey, String contact) {
        try {
            return Optional.of(new PushKeys(VapidKeys.fromUncompressedBytes(publicKey, privateKey), contact));
        } catch (IllegalArgumentException strangers) {
            return Optional.empty();
        }
    }

    public static Texts fresh() {
        VapidKeys made = VapidKeys.generate();
        return new Texts(
                CurvePoint.text(made.getApplicationServerKey()),
                CurvePoint.text(bare(made.getPrivateKey().getS())));
    }

    /** What a browser binds its address to: it takes notices from whoever holds the private key, from nobody else. */
    public String publicKey() {
        return CurvePoint.text(pair.getApplicationServerKey());
    }

    private static byte[] bare(BigInteger number) {
        byte[] bytes = number.toByteArray();
        byte[] bare = new byte[PRIVATE_BYTES];
        int length = Math.min(bytes.length, PRIVATE_BYTES);
        System.arraycopy(bytes, bytes.length - length, bare, PRIVATE_BYTES - length, length);
        return bare;
    }
}
