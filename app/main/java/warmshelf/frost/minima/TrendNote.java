package warmshelf.frost.minima;

import static warmshelf.frost.minima.MinimaSentences.SAY;

import java.util.Locale;
import java.util.OptionalDouble;
import warmshelf.words.Numbers;

/**
 * What a trend means for the one-in-ten day.
 *
 * @param spring whether it is the last frost of springs that moved; otherwise the first of autumns
 * @param changeDays how much later that day is at the record's end than over all of it; empty where one of both is not known
 */
public record TrendNote(boolean spring, Trend trend, OptionalDouble changeDays) {
    /** Less than this would be written as nothing, in days each ten years. */
    private static final double LEAST_TOLD = 0.05;

    /** The note to the trend of a side. */
    public static TrendNote of(Trend trend, FrostSide side) {
        OptionalDouble now = trend.atItsEnd(side).dayAt(0.1);
        OptionalDouble whole = side.dayAt(0.1);
        return new TrendNote(
                side.spring(),
                trend,
                now.isPresent() && whole.isPresent()
                        ? OptionalDouble.of(now.getAsDouble() - whole.getAsDouble())
                        : OptionalDouble.empty());
    }

    /** The note as a sentence. */
    public String words() {
        String frost = spring ? SAY.lastOfSpring() : SAY.firstOfAutumn();
        double perDecade = trend.daysPerDecade();
        if (Math.abs(perDecade) < LEAST_TOLD) {
            return SAY.cameSteadily(trend.firstYear(), trend.lastYear(), frost);
        }
        String days = Numbers.oneDecimal(Math.abs(perDecade));
        String moved = perDecade > 0
                ? SAY.cameLater(trend.firstYear(), trend.lastYear(), frost, days)
                : SAY.cameEarlier(trend.firstYear(), trend.lastYear(), frost, days);
        return trend.isClear() ? clear(moved) : SAY.withinChance(moved);
    }

    private String clear(String moved) {
        if (changeDays.isEmpty()) {
            return SAY.moved(moved);
        }
        double change = changeDays.getAsDouble();
        String days = whole(Math.abs(change));
        return change > 0 ? SAY.nowLater(moved, trend.lastYear(), days) : SAY.nowEarlier(moved, trend.lastYear(), days);
    }

    static String whole(double days) {
        return String.format(Locale.ROOT, "%.0f", days);
    }
}
