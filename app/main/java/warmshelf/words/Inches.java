package warmshelf.words;

import java.util.Locale;

/** Inches as people say and measure them: in eighths up to two inches, in decimals above. */
public final class Inches {
    private static final String[] EIGHTHS = {"", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"};
    private static final int PARTS = 8;
    /** From here on people say decimals or halves, as makers of trays do. */
    private static final double LARGE = 2;
    /** A figure farther than this from an eighth was not measured in eighths. */
    private static final double NEAR = 0.25;

    private Inches() {}

    /** For example '¼', '1½' or 'under ⅛'. */
    public static String words(double inches) {
        double parts = inches * PARTS;
        long eighths = Math.round(parts);
        if (inches > 0 && parts < 1 - NEAR) {
            return "under " + EIGHTHS[1];
        }
        if (inches >= LARGE || Math.abs(parts - eighths) > NEAR) {
            return decimal(inches);
        }
        long whole = eighths / PARTS;
        String fraction = EIGHTHS[(int) (eighths % PARTS)];
        return whole == 0 && !fraction.isEmpty() ? fraction : whole + fraction;
    }

    private static String decimal(double inches) {
        return String.format(Locale.ROOT, "%,.4f", inches).replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
