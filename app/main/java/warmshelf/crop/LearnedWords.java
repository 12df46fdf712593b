package warmshelf.crop;

import java.util.UUID;
import warmshelf.words.Numbers;

/** What was learned of a crop's emergence, in sentences. */
public final class LearnedWords {
    private LearnedWords() {}

    /**
     * What the group's sowings say of a crop.
     *
     * @param table the published days at that temperature
     * @param place the temperature in the reader's units
     */
    public static String ofCrop(LearnedEmergence learned, double table, String place) {
        if (!learned.counts()) {
            return learned.sowings() == 0
                    ? "Nothing has been seen here yet, so dates go by the table."
                    : "One sowing has been seen here. Dates go by the table until there are two.";
        }
        return shifted("From %d sowings here".formatted(learned.sowings()), table, learned.factor(), place);
    }

    /** What the sowings of one lot say, or else of the whole crop; empty while there are too few. */
    public static String ofLot(LearnedEmergence learned, UUID lot, double table, String place) {
        if (!learned.counts()) {
            return "";
        }
        return learned.known(lot)
                .map(own -> shifted(
                        "From %d sowings of this lot here".formatted(own.sowings()),
                        table,
                        own.shift().factor(),
                        place))
                .orElseGet(() -> ofCrop(learned, table, place));
    }

    private static String shifted(String from, double table, double factor, String place) {
        return "%s: %s the table, %s days instead of %s at %s."
                .formatted(from, difference((factor - 1) * table), days(factor * table), days(table), place);
    }

    private static String difference(double days) {
        double halves = Math.round(2 * Math.abs(days)) / 2.0;
        if (halves == 0) {
            return "much the same as";
        }
        return amount(halves) + (days > 0 ? " later than" : " sooner than");
    }

    private static String amount(double halves) {
        if (halves == 0.5) {
            return "half a day";
        }
        if (halves == 1) {
            return "a day";
        }
        return halves == 1.5 ? "a day and a half" : days(halves) + " days";
    }

    /** Days to a tenth, without a tenth that is nought. */
    public static String days(double days) {
        return Numbers.oneDecimalAtMost(days);
    }
}
