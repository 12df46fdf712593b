package warmshelf.label;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.random.RandomGenerator;
import warmshelf.decision.Decision;

/**
 * Six signs on a label: five of choice and one that finds out a slip of the pen. Signs that are easily taken for one another (0
 * and O, 1 and I and L) are not used, which leaves 31; that is a prime, so the weighted sum of ISBN-10 (ISO 2108), taken modulo
 * 31, finds every single wrong sign and every two signs that changed places.
 *
 * @param text six signs, capitals and digits
 */
public record ShortCode(String text) {
    static final String SIGNS = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";
    /** No other code takes more room. It is nobody's: its last sign does not belong to the five before. */
    static final ShortCode WIDEST = new ShortCode("MWMWMW");

    private static final int LENGTH = 6;
    private static final int SHOWN = 12;

    /** A code at random; whether it is taken already is for the caller to see. */
    static ShortCode random(RandomGenerator random) {
        StringBuilder five = new StringBuilder();
        for (int i = 0; i < LENGTH - 1; i++) {
            five.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
        }
        return completed(five.toString());
    }

    /** Five signs with the sixth that belongs to them. */
    static ShortCode completed(String five) {
        int check = Math.floorMod(-sum(five), SIGNS.length());
        return new ShortCode(five + SIGNS.charAt(check));
    }

    /** A code as somebody typed it: small letters, spaces and hyphens do no harm. */
    public static Decision<ShortCode> typed(String text) {
        String signs = text.strip().toUpperCase(Locale.ROOT).replaceAll("[\\s-]", "");
        return refusal(signs)
                .<Decision<ShortCode>>map(Decision.Refused::new)
                .orElseGet(() -> new Decision.Done<>(new ShortCode(signs)));
    }

    private static Optional<CodeRefusal> refusal(String signs) {
        if (signs.isEmpty()) {
            return Optional.of(new CodeRefusal.Empty());
        }
        String shown = signs.length() > SHOWN ? signs.substring(0, SHOWN) + "…" : signs;
        OptionalInt unknown =
                signs.chars().filter(sign -> SIGNS.indexOf(sign) < 0).findFirst();
        if (unknown.isPresent()) {
            return Optional.of(new CodeRefusal.UnknownSign(shown, (char) unknown.getAsInt()));
        }
        if (signs.length() != LENGTH) {
            return Optional.of(new CodeRefusal.WrongLength(shown, signs.length()));
        }
        return completed(signs.substring(0, LENGTH - 1)).text().equals(signs)
                ? Optional.empty()
                : Optional.of(new CodeRefusal.CannotBe(shown));
    }

    /** In two halves, as it stands on a label: 'K7P 4MX'. */
    public String spaced() {
        return text.substring(0, LENGTH / 2) + " " + text.substring(LENGTH / 2);
    }

    private static int sum(String five) {
        int sum = 0;
        for (int i = 0; i < five.length(); i++) {
            sum += (LENGTH - i) * SIGNS.indexOf(five.charAt(i));
        }
        return sum;
    }
}
