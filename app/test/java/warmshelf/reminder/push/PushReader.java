package warmshelf.reminder.push;

import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.AlgorithmParameters;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.interfaces.ECPrivateKey;
import java.security.interfaces.ECPublicKey;
import java.security.spec.ECGenParameterSpec;
import java.security.spec.ECParameterSpec;
import java.security.spec.ECPoint;
import java.security.spec.ECPrivateKeySpec;
import java.security.spec.ECPublicKeySpec;
import java.util.Arrays;
import java.util.Base64;
import javax.crypto.Cipher;
import javax.crypto.KeyAgreement;
import javax.crypto.Mac;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/** A device that reads what it is sent, written from RFC 8291 (section 3) and RFC 8188 (section 2) with the JDK alone. */
public final class PushReader {
    private static final int TAG = 16;

    private final ECPrivateKey key;
    private final byte[] publicKey;
    private final byte[] auth;

    private PushReader(ECPrivateKey key, byte[] publicKey, byte[] auth) {
        this.key = key;
        this.publicKey = publicKey;
        this.auth = auth;
    }

    /** A device with keys of its own. */
    public static PushReader fresh() {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
            generator.initialize(new ECGenParameterSpec("secp256r1"));
            KeyPair pair = generator.generateKeyPair();
            return new PushReader(
                    (ECPrivateKey) pair.getPrivate(), uncompressed((ECPublicKey) pair.getPublic()), new byte[TAG]);
        } catch (GeneralSecurityException broken) {
            throw new IllegalStateException(broken);
        }
    }

    static PushReader of(String privateKey, String publicKey, String auth) {
        try {
            ECPrivateKeySpec spec = new ECPrivateKeySpec(new BigInteger(1, bytes(privateKey)), curve());
            return new PushReader(
                    (ECPrivateKey) KeyFactory.getInstance("EC").generatePrivate(spec), bytes(publicKey), bytes(auth));
        } catch (GeneralSecurityException broken) {
            throw new IllegalStateException(broken);
        }
    }

    public String p256dh() {
        return text(publicKey);
    }

    public String auth() {
        return text(auth);
    }

    /** What a message says. */
    public String read(byte[] message) {
        try {
            // RFC 8188, section 2.1: salt, record size, the length of the key's name, and that name: the sender's key
            ByteBuffer header = ByteBuffer.wrap(message);
            byte[] salt = take(header, 16);
            int recordSize = header.getInt();
            byte[] sender = take(header, header.get() & 0xff);
            byte[] sealed = take(header, header.remaining());
            if (sealed.length > recordSize) {
                throw new IllegalStateException("one record only: RFC 8291, section 4");
            }
            // RFC 8291, sections 3.3 and 3.4
            byte[] keyInfo = join("WebPush: info\0".getBytes(StandardCharsets.US_ASCII), publicKey, sender);
            byte[] secret = derive(auth, agreed(sender), keyInfo, 32);
            // RFC 8188, sections 2.2 and 2.3; the first record's nonce is not changed by its number
            byte[] contentKey =
                    derive(salt, secret, "Content-Encoding: aes128gcm\0".getBytes(StandardCharsets.US_ASCII), 16);
            byte[] nonce = derive(salt, secret, "Content-Encoding: nonce\0".getBytes(StandardCharsets.US_ASCII), 12);
            Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
            cipher.init(
                    Cipher.DECRYPT_MODE, new SecretKeySpec(contentKey, "AES"), new GCMParameterSpec(TAG * 8, nonce));
            return unpadded(cipher.doFinal(sealed));
        } catch (GeneralSecurityException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /** RFC 8188, section 2: the last record ends with a 2 and any number of noughts. */
    private static String unpadded(byte[] record) {
        int end = record.length - 1;
        while (record[end] == 0) {
            end--;
        }
        if (record[end] != 2) {
            throw new IllegalStateException("the last record ends with 2");
        }
        return new String(record, 0, end, StandardCharsets.UTF_8);
    }

    private byte[] agreed(byte[] sender) throws GeneralSecurityException {
        KeyAgreement agreement = KeyAgreement.getInstance("ECDH");
        agreement.init(key);
        agreement.doPhase(publicKey(sender), true);
        return agreement.generateSecret();
    }

    /** HKDF with SHA-256 (RFC 5869) for at most 32 bytes. */
    private static byte[] derive(byte[] salt, byte[] material, byte[] info, int length)
            throws GeneralSecurityException {
        byte[] pseudoRandom = mac(salt, material);
        return Arrays.copyOf(mac(pseudoRandom, join(info, new byte[] {1})), length);
    }

    private static byte[] mac(byte[] key, byte[] words) throws GeneralSecurityException {
        Mac mac = Mac.getInstance("HmacSHA256");
        mac.init(new SecretKeySpec(key, "HmacSHA256"));
        return mac.doFinal(words);
    }

    /** An uncompressed point as a key. */
    static ECPublicKey publicKey(byte[] point) throws GeneralSecurityException {
        BigInteger x = new BigInteger(1, Arrays.copyOfRange(point, 1, 33));
        BigInteger y = new BigInteger(1, Arrays.copyOfRange(point, 33, 65));
        return (ECPublicKey)
                KeyFactory.getInstance("EC").generatePublic(new ECPublicKeySpec(new ECPoint(x, y), curve()));
    }

    private static byte[] uncompressed(ECPublicKey key) {
        return join(
                new byte[] {4}, bare(key.getW().getAffineX()), bare(key.getW().getAffineY()));
    }

    private static byte[] bare(BigInteger number) {
        byte[] bytes = number.toByteArray();
        byte[] bare = new byte[32];
        int length = Math.min(32, bytes.length);
        System.arraycopy(bytes, bytes.length - length, bare, 32 - length, length);
        return bare;
    }

    private static ECParameterSpec curve() throws GeneralSecurityException {
        AlgorithmParameters parameters = AlgorithmParameters.getInstance("EC");
        parameters.init(new ECGenParameterSpec("secp256r1"));
        return parameters.getParameterSpec(ECParameterSpec.class);
    }

    private static byte[] take(ByteBuffer from, int length) {
        byte[] bytes = new byte[length];
        from.get(bytes);
        return bytes;
    }

    private static byte[] join(byte[]... parts) {
        ByteBuffer whole = ByteBuffer.allocate(
                Arrays.stream(parts).mapToInt(part -> part.length).sum());
        Arrays.stream(parts).forEach(whole::put);
        return whole.array();
    }

    static byte[] bytes(String text) {
        return Base64.getUrlDecoder().decode(text);
    }

    private static String text(byte[] bytes) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }
}
