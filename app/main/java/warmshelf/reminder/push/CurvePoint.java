package warmshelf.reminder.push;

import java.math.BigInteger;
import java.security.AlgorithmParameters;
import java.security.GeneralSecurityException;
import java.security.spec.ECFieldFp;
import java.security.spec.ECGenParameterSpec;
import java.security.spec.ECParameterSpec;
import java.util.Arrays;
import java.util.Base64;

/** Keys on the curve P-256 as web push writes them: base64url of bare bytes. */
public final class CurvePoint {
    private static final int COORDINATE = 32;
    private static final int UNCOMPRESSED = 4;
    private static final ECParameterSpec CURVE = curve();

    private CurvePoint() {}

    /** Whether a text is an uncompressed point on the curve: 65 bytes, the first of them 4. */
    public static boolean isPublicKey(String text) {
        byte[] bytes = bytes(text);
        if (bytes.length != 1 + 2 * COORDINATE || bytes[0] != UNCOMPRESSED) {
            return false;
        }
        BigInteger x = new BigInteger(1, Arrays.copyOfRange(bytes, 1, 1 + COORDINATE));
        BigInteger y = new BigInteger(1, Arrays.copyOfRange(bytes, 1 + COORDINATE, bytes.length));
        BigInteger p = ((ECFieldFp) CURVE.getCurve().getField()).getP();
        // y² = x³ + ax + b; a point off the curve could be made to give a secret away
        BigInteger right = x.pow(3)
                .add(CURVE.getCurve().getA().multiply(x))
                .add(CURVE.getCurve().getB())
                .mod(p);
        return x.compareTo(p) < 0 && y.compareTo(p) < 0 && y.pow(2).mod(p).equals(right);
    }

    /** Whether a text is a private key of the curve: 32 bytes, not nought, below the curve's order. */
    public static boolean isPrivateKey(String text) {
        byte[] bytes = bytes(text);
        BigInteger number = new BigInteger(1, bytes);
        return bytes.length == COORDINATE && number.signum() > 0 && number.compareTo(CURVE.getOrder()) < 0;
    }

    /** Base64url with or without padding; nothing when the text is something else. */
    public static byte[] bytes(String text) {
        try {
            return Base64.getUrlDecoder().decode(text);
        } catch (IllegalArgumentException notBase64) {
            return new byte[0];
        }
    }

    static String text(byte[] bytes) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private static ECParameterSpec curve() {
        try {
            AlgorithmParameters parameters = AlgorithmParameters.getInstance("EC");
            parameters.init(new ECGenParameterSpec("secp256r1"));
            return parameters.getParameterSpec(ECParameterSpec.class);
        } catch (GeneralSecurityException absent) {
            throw new IllegalStateException("every Java has the curve P-256", absent);
        }
    }
}
