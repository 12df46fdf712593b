package warmshelf.guide;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A figure or a range as a source gives it, in the reader's unit.
 *
 * @param before words such as 'up to' that the source puts before it
 * @param after words such as 'or more' that the source puts after it
 */
public record Amount(double low, double high, String unit, String before, String after) {
    private static final double MM_PER_CM = 10;
    private static final String NUMBER = "\\d+(?:[./]\\d+)?";
    private static final Pattern PRINTED =
            Pattern.compile("(up to|about|more than)? ?(" + NUMBER + ")(?:-(" + NUMBER + "))? ?(or more)?(.*)");

    static Amount of(double low, double high, String unit) {
        return new Amount(low, high, unit, "", "");
    }

    /**
     * A value as the reference tables print it, such as '4-6', '1/8-1/4' or 'up to 5'.
     *
     * @param unit the table's word for its unit; empty where the value carries it itself, as in '10-15 cm'
     * @throws IllegalArgumentException when it is no figure
     */
    static Amount printed(String value, String unit) {
        Matcher matcher = PRINTED.matcher(value);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("'" + value + "' is no figure or range");
        }
        double low = number(matcher.group(2));
        double high = matcher.group(3) == null ? low : number(matcher.group(3));
        String own = matcher.group(5).replace("or more", "").strip();
        String after = matcher.group(4) != null || matcher.group(5).contains("or more") ? "or more" : "";
        String named = unit.isEmpty() ? own : unit;
        String before = matcher.group(1) == null ? "" : matcher.group(1);
        return named.equals("mm")
                ? new Amount(low / MM_PER_CM, high / MM_PER_CM, "cm", before, after)
                : new Amount(low, high, words(named), before, after);
    }

    private static String words(String unit) {
        return switch (unit) {
            case "F", "C" -> "°" + unit;
            case "h", "hours" -> "hours";
            case "h per day" -> "hours a day";
            case "umol m-2 s-1" -> "µmol/m² a second";
            case "mol m-2 d-1" -> "mol/m² a day";
            case "% H2O2" -> "% peroxide";
            case "x diameter" -> "times its thickness";
            case "x width", "x widest" -> "times its width";
            default -> unit;
        };
    }

    private static double number(String text) {
        int slash = text.indexOf('/');
        return slash < 0
                ? Double.parseDouble(text)
                : Double.parseDouble(text.substring(0, slash)) / Double.parseDouble(text.substring(slash + 1));
    }

    /** For example '10–15 cm', 'up to 24 hours' or '70 °F or more'. */
    public String words() {
        String range = low == high ? figure(low) : figure(low) + "–" + figure(high);
        return (before + " " + range + " " + unit + " " + after).strip().replaceAll(" +", " ");
    }

    /** Its lower end as a page prints it: degrees whole, all else as exact as the table. */
    String lowFigure() {
        return figure(low);
    }

    String highFigure() {
        return figure(high);
    }

    private String figure(double value) {
        double shown = unit.startsWith("°") ? Math.round(value) : value;
        return String.format(Locale.ROOT, "%,.3f", shown).replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
