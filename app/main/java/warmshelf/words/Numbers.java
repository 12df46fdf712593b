package warmshelf.words;

import java.math.BigDecimal;
import java.util.Locale;

/** Numbers rounded and written, with a point before their decimals whatever the machine's language. */
public final class Numbers {
    private Numbers() {}

    /** To the nearest tenth; halves go up. */
    public static double tenths(double number) {
        return Math.round(number * 10) / 10.0;
    }

    /** To the nearest hundredth; halves go up. */
    public static double hundredths(double number) {
        return Math.round(number * 100) / 100.0;
    }

    /** As exact as it is and without noughts at its end, for example '26' or '27.25'. */
    public static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** A count with a comma between its thousands, for example '2,000'. */
    public static String grouped(int count) {
        return String.format(Locale.ROOT, "%,d", count);
    }

    /** With one decimal always, for example '9.0' or '8.5'. */
    public static String oneDecimal(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }

    /** With one decimal unless that is nought, for example '9' or '8.5'. */
    public static String oneDecimalAtMost(double number) {
        return oneDecimal(number).replace(".0", "");
    }
}
