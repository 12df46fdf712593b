package warmshelf.guide;

import static warmshelf.guide.GuideSentences.SAY;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.apache.commons.csv.CSVRecord;
import warmshelf.words.Inches;

/**
 * A figure or a range as a source gives it, in the reader's unit.
 *
 * @param bound what the source says it is
 */
public record Amount(double low, double high, String unit, Bound bound) {
    private static final double MM_PER_CM = 10;
    private static final String SHARE = "share";
    private static final String SPOONS = "teaspoons";
    private static final double HALF = 0.5;
    private static final double QUARTER = 0.25;

    /** Whether a figure stands for itself, or for what lies at one side of it. */
    public enum Bound {
        EXACT("", figure -> figure),
        UP_TO("up-to", SAY::upTo),
        ABOUT("about", SAY::about),
        MORE_THAN("more-than", SAY::moreThan),
        OR_MORE("or-more", SAY::orMore);

        private final String code;
        private final UnaryOperator<String> words;

        Bound(String code, UnaryOperator<String> words) {
            this.code = code;
            this.words = words;
        }

        static Bound named(String code) {
            return Arrays.stream(values())
                    .filter(each -> each.code.equals(code))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no bound has the code '" + code + "'"));
        }
    }

    static Amount of(double low, double high, String unit) {
        return new Amount(low, high, unit, Bound.EXACT);
    }

    /** The figure of a row of the table of practice; empty where its value is words. */
    static Optional<Amount> ofRow(CSVRecord row) {
        return of(row.get("low"), row.get("high"), row.get("unit"), row.get("bound"));
    }

    /** The same in metric units; empty where the table has none. */
    static Optional<Amount> metricOfRow(CSVRecord row) {
        return of(row.get("metric_low"), row.get("metric_high"), row.get("metric_unit"), row.get("bound"));
    }

    /** As the columns of the table have it; lengths in millimetres become centimetres, as gardeners say them. */
    static Optional<Amount> of(String low, String high, String unit, String bound) {
        if (low.isEmpty()) {
            return Optional.empty();
        }
        double least = Double.parseDouble(low);
        double most = Double.parseDouble(high);
        Bound of = Bound.named(bound);
        return Optional.of(
                unit.equals("mm")
                        ? new Amount(least / MM_PER_CM, most / MM_PER_CM, "cm", of)
                        : new Amount(least, most, words(unit), of));
    }

    private static String words(String unit) {
        return switch (unit) {
            case "F", "C" -> "°" + unit;
            case "h" -> SAY.hours();
            case "h/d" -> SAY.hoursADay();
            case "umol/m2/s" -> SAY.micromolesASecond();
            case "mol/m2/d" -> SAY.molesADay();
            case "ppm-N" -> SAY.nitrogen();
            case "W/ft2" -> SAY.wattsASquareFoot();
            case "W/m2" -> SAY.wattsASquareMetre();
            case "%H2O2" -> SAY.peroxide();
            case "x-diameter" -> SAY.timesThickness();
            case "x-width", "x-widest" -> SAY.timesWidth();
            default -> unit;
        };
    }

    /** For example '10–15 cm', 'up to 24 hours' or '70 °F or more'. */
    public String words() {
        String range = low == high ? figure(low) : figure(low) + "–" + figure(high);
        return bound.words.apply((range + " " + unitWord()).strip());
    }

    private String unitWord() {
        if (unit.equals(SHARE)) {
            return "";
        }
        return unit.equals(SPOONS) && high <= 1 ? "teaspoon" : unit;
    }

    /** Its lower end alone. */
    Amount least() {
        return new Amount(low, low, unit, bound);
    }

    /** Its upper end alone. */
    Amount most() {
        return new Amount(high, high, unit, bound);
    }

    /** Its lower end as a page prints it: degrees whole, all else as exact as the table. */
    String lowFigure() {
        return figure(low);
    }

    String highFigure() {
        return figure(high);
    }

    private String figure(double value) {
        if (value == HALF && (unit.equals(SHARE) || unit.equals(SPOONS))) {
            return unit.equals(SHARE) ? "half" : "½";
        }
        if (value == QUARTER && unit.equals(SHARE)) {
            return "a quarter";
        }
        if (unit.equals("in")) {
            return Inches.words(value);
        }
        double shown = unit.startsWith("°") ? Math.round(value) : value;
        return String.format(Locale.ROOT, "%,.4f", shown).replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
