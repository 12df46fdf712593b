package warmshelf.passkey;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.security.Signature;
import java.security.interfaces.ECPublicKey;
import java.security.spec.ECGenParameterSpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.UUID;

/** A device that makes and uses a passkey, by the standard's own words and the JDK alone; it can also be told to do it wrong. */
final class SoftKey {
    private static final Base64.Encoder TEXT = Base64.getUrlEncoder().withoutPadding();
    private static final int PRESENT_AND_VERIFIED = 0x05;
    private static final int PRESENT = 0x01;
    private static final int WITH_KEY = 0x40;

    private final byte[] id = ByteBuffer.allocate(16)
            .putLong(UUID.randomUUID().getMostSignificantBits())
            .putLong(UUID.randomUUID().getLeastSignificantBits())
            .array();
    private final KeyPair pair = pair();
    private final String party;
    String origin;
    int count;
    boolean verifies = true;

    SoftKey(String party, String origin) {
        this.party = party;
        this.origin = origin;
    }

    String id() {
        return TEXT.encodeToString(id);
    }

    /** The answer to a question for a new key. */
    String made(String challenge) {
        byte[] device = device(true);
        byte[] object = joined(
                bytes(0xa3),
                word("fmt"),
                word("none"),
                word("attStmt"),
                bytes(0xa0),
                word("authData"),
                bytes(0x58, device.length),
                device);
        return answer(
                "webauthn.create", challenge, "\"attestationObject\":\"%s\"".formatted(TEXT.encodeToString(object)));
    }

    /** The answer to a question at the door. */
    String signed(String challenge) {
        byte[] device = device(false);
        byte[] client = client("webauthn.get", challenge).getBytes(StandardCharsets.UTF_8);
        return answer(
                "webauthn.get",
                challenge,
                "\"authenticatorData\":\"%s\",\"signature\":\"%s\""
                        .formatted(
                                TEXT.encodeToString(device),
                                TEXT.encodeToString(signature(joined(device, hash(client))))));
    }

    private String answer(String type, String challenge, String rest) {
        String client = TEXT.encodeToString(client(type, challenge).getBytes(StandardCharsets.UTF_8));
        return "{\"id\":\"%1$s\",\"rawId\":\"%1$s\",\"type\":\"public-key\",\"clientExtensionResults\":{},"
                        .formatted(id())
                + "\"response\":{\"clientDataJSON\":\"%s\",%s}}".formatted(client, rest);
    }

    private String client(String type, String challenge) {
        return "{\"type\":\"%s\",\"challenge\":\"%s\",\"origin\":\"%s\",\"crossOrigin\":false}"
                .formatted(type, challenge, origin);
    }

    private byte[] device(boolean withKey) {
        int flags = (verifies ? PRESENT_AND_VERIFIED : PRESENT) | (withKey ? WITH_KEY : 0);
        byte[] counted = ByteBuffer.allocate(4).putInt(count).array();
        byte[] head = joined(hash(party.getBytes(StandardCharsets.UTF_8)), bytes(flags), counted);
        return withKey ? joined(head, new byte[16], bytes(0, id.length), id, publicKey()) : head;
    }

    /** COSE_Key: an EC2 key (1: 2) for ES256 (3: -7) on P-256 (-1: 1), with x (-2) and y (-3). */
    private byte[] publicKey() {
        ECPublicKey key = (ECPublicKey) pair.getPublic();
        return joined(
                bytes(0xa5, 0x01, 0x02, 0x03, 0x26, 0x20, 0x01, 0x21, 0x58, 32),
                coordinate(key.getW().getAffineX().toByteArray()),
                bytes(0x22, 0x58, 32),
                coordinate(key.getW().getAffineY().toByteArray()));
    }

    private static byte[] coordinate(byte[] number) {
        byte[] whole = new byte[32];
        int length = Math.min(32, number.length);
        System.arraycopy(number, number.length - length, whole, 32 - length, length);
        return whole;
    }

    private byte[] signature(byte[] what) {
        try {
            Signature signature = Signature.getInstance("SHA256withECDSA");
            signature.initSign(pair.getPrivate());
            signature.update(what);
            return signature.sign();
        } catch (GeneralSecurityException broken) {
            throw new IllegalStateException(broken);
        }
    }

    private static KeyPair pair() {
        try {
            KeyPairGenerator maker = KeyPairGenerator.getInstance("EC");
            maker.initialize(new ECGenParameterSpec("secp256r1"));
            return maker.generateKeyPair();
        } catch (GeneralSecurityException broken) {
            throw new IllegalStateException(broken);
        }
    }

    private static byte[] hash(byte[] of) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(of);
        } catch (GeneralSecurityException broken) {
            throw new IllegalStateException(broken);
        }
    }

    private static byte[] word(String word) {
        return joined(bytes(0x60 + word.length()), word.getBytes(StandardCharsets.US_ASCII));
    }

    private static byte[] bytes(int... each) {
        byte[] bytes = new byte[each.length];
        for (int i = 0; i < each.length; i++) {
            bytes[i] = (byte) each[i];
        }
        return bytes;
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        Arrays.stream(parts).forEach(all::writeBytes);
        return all.toByteArray();
    }
}
