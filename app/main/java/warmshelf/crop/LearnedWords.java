package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

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
            return learned.sowings() == 0 ? SAY.nothingSeen() : SAY.oneSowingSeen();
        }
        return shifted(SAY.fromSowings(learned.sowings()), table, learned.factor(), place);
    }

    /** What the sowings of one lot say, or else of the whole crop; empty while there are too few. */
    public static String ofLot(LearnedEmergence learned, UUID lot, double table, String place) {
        if (!learned.counts()) {
            return "";
        }
        return learned.known(lot)
                .map(own -> shifted(
                        SAY.fromSowingsOfLot(own.sowings()), table, own.shift().factor(), place))
                .orElseGet(() -> ofCrop(learned, table, place));
    }

    private static String shifted(String from, double table, double factor, String place) {
        return SAY.shifted(from, difference((factor - 1) * table), days(factor * table), days(table), place);
    }

    private static String difference(double days) {
        double halves = Math.round(2 * Math.abs(days)) / 2.0;
        if (halves == 0) {
            return SAY.muchTheSame();
        }
        return days > 0 ? SAY.laterThan(amount(halves)) : SAY.soonerThan(amount(halves));
    }

    private static String amount(double halves) {
        if (halves == 0.5) {
            return SAY.halfADay();
        }
        if (halves == 1) {
            return SAY.aDay();
        }
        return halves == 1.5 ? SAY.aDayAndAHalf() : SAY.days(days(halves));
    }

    /** Days to a tenth, without a tenth that is nought. */
    public static String days(double days) {
        return Numbers.oneDecimalAtMost(days);
    }
}
