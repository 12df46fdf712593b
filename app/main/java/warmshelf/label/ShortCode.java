package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import java.util.Locale;
import java.util.random.RandomGenerator;

/**
 * Six signs on a label: five of choice and one that finds out a slip of the pen. Signs that are easily taken for one another (0
 * and O, 1 and I and L) are not used, which leaves 31; that is a prime, so the weighted sum of ISBN-10 (ISO 2108), taken modulo
 * 31, finds every single wrong sign and every two signs that changed places.
 *
 * @param text six signs, capitals and digits
 */
public record ShortCode(String text) {
    static final String SIGNS = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";
    private static final int LENGTH = 6;

    /** Why a typed code cannot be one. */
    public static final class Mistyped extends Exception {
        private static final long serialVersionUID = 1L;

        private final String sentence;

        Mistyped(String sentence) {
            super(sentence);
            this.sentence = sentence;
        }

        public String sentence() {
            return sentence;
        }
    }

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

    /**
     * A code as somebody typed it: small letters, spaces and hyphens do no harm.
     *
     * @throws Mistyped with a sentence that says what is wrong
     */
    public static ShortCode typed(String text) throws Mistyped {
        String signs = text.strip().toUpperCase(Locale.ROOT).replaceAll("[\\s-]", "");
        if (signs.isEmpty()) {
            throw new Mistyped(SAY.codeEmpty());
        }
        String shown = signs.length() > 12 ? signs.substring(0, 12) + "…" : signs;
        for (int i = 0; i < signs.length(); i++) {
            if (SIGNS.indexOf(signs.charAt(i)) < 0) {
                throw new Mistyped(SAY.signUnknown(shown, signs.charAt(i)));
            }
        }
        if (signs.length() != LENGTH) {
            throw new Mistyped(SAY.codeLength(shown, signs.length()));
        }
        if (Math.floorMod(sum(signs.substring(0, LENGTH - 1)) + SIGNS.indexOf(signs.charAt(LENGTH - 1)), SIGNS.length())
                != 0) {
            throw new Mistyped(SAY.codeCannotBe(shown));
        }
        return new ShortCode(signs);
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
