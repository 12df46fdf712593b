package warmshelf.frost.minima;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** One thermometer's lowest temperature of each day, however the file was sorted: two bytes a day, days may be missing. */
public final class DailyMinima {
    private static final short MISSING = Short.MIN_VALUE;
    private static final int DAYS = 366;

    private final NavigableMap<Integer, short[]> years = new TreeMap<>();
    private int size;

    /**
     * Takes the minimum of one day, in degrees Celsius; kept to a hundredth.
     *
     * @return false when that day has a minimum already; the first is kept
     */
    public boolean add(LocalDate day, double celsius) {
        short[] year = years.computeIfAbsent(day.getYear(), unused -> emptyYear());
        int index = day.getDayOfYear() - 1;
        if (year[index] != MISSING) {
            return false;
        }
        year[index] = (short) Math.round(100 * celsius);
        size++;
        return true;
    }

    private static short[] emptyYear() {
        short[] days = new short[DAYS];
        Arrays.fill(days, MISSING);
        return days;
    }

    /** The minimum of a day in degrees Celsius; empty where it is missing. */
    public OptionalDouble on(LocalDate day) {
        return isKnown(day) ? OptionalDouble.of(hundredths(day) / 100.0) : OptionalDouble.empty();
    }

    /** Whether a day's minimum was at or below the threshold. */
    boolean isFrost(LocalDate day, double thresholdC) {
        return isKnown(day) && hundredths(day) <= Math.round(100 * thresholdC);
    }

    boolean isKnown(LocalDate day) {
        return hundredths(day) != MISSING;
    }

    private short hundredths(LocalDate day) {
        short[] year = years.get(day.getYear());
        return year == null ? MISSING : year[day.getDayOfYear() - 1];
    }

    /** Number of days from one to another, both included, without a minimum. */
    public int missing(LocalDate from, LocalDate to) {
        int missing = 0;
        for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
            missing += isKnown(day) ? 0 : 1;
        }
        return missing;
    }

    /** Number of days with a minimum. */
    public int size() {
        return size;
    }

    /** The years with at least one minimum. */
    public NavigableSet<Integer> years() {
        return years.navigableKeySet();
    }
}
