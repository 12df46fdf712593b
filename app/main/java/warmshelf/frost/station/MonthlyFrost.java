package warmshelf.frost.station;

import java.util.OptionalDouble;

/**
 * When the frosts of a place come, told from no more than its twelve monthly mean minima: a daily curve through them, nights
 * that stray from it, and from these the chance that frost is over, or has not begun, day by day.
 */
public final class MonthlyFrost {
    /** 31 July, the last day of a northern spring, counted from 1 January as 0. */
    private static final int MIDSUMMER = 211;

    private static final int HALF_YEAR_MONTHS = 6;
    /** 1 July is the 182nd day of a year as 1 January is the first. */
    private static final int HALF_YEAR_DAYS = 181;

    private final double[] noneAfter;
    private final double[] noneBefore;
    private final int shift;

    private MonthlyFrost(double[] noneAfter, double[] noneBefore, int shift) {
        this.noneAfter = noneAfter;
        this.noneBefore = noneBefore;
        this.shift = shift;
    }

    /**
     * Works the chances out.
     *
     * @param means mean daily minimum of the twelve months in degrees Celsius, January first
     * @param south whether the place lies south of the equator; its year is then counted from July
     */
    public static MonthlyFrost of(double[] means, boolean south) {
        return of(means, south, 0);
    }

    /**
     * The same for nights at or below another temperature. The constants were fitted at 0 °C only.
     *
     * @param thresholdC how cold a night must be to count, in degrees Celsius
     */
    public static MonthlyFrost of(double[] means, boolean south, double thresholdC) {
        double[] year = south ? fromJuly(means) : means;
        NightSpread spread = new NightSpread(new DailyCurve(year), thresholdC);
        return new MonthlyFrost(
                FrostFreeChance.of(DailyCurve.DAYS, night -> spread.frostAt(MIDSUMMER - night)),
                FrostFreeChance.of(DailyCurve.DAYS, night -> spread.frostAt(MIDSUMMER + 1 + night)),
                south ? HALF_YEAR_DAYS : 0);
    }

    private static double[] fromJuly(double[] means) {
        double[] year = new double[means.length];
        for (int i = 0; i < means.length; i++) {
            year[i] = means[(i + HALF_YEAR_MONTHS) % means.length];
        }
        return year;
    }

    /** Share of springs with any frost since the midsummer before. */
    public double anySpringFrost() {
        return any(noneAfter);
    }

    /** Share of autumns with any frost until the midsummer after. */
    public double anyAutumnFrost() {
        return any(noneBefore);
    }

    private static double any(double[] none) {
        return 1 - none[none.length - 1];
    }

    /** The day (number of a 365-day year) after which a share of all springs still has a frost; empty where fewer have any. */
    public OptionalDouble lastSpringFrost(double risk) {
        OptionalDouble nights = nights(noneAfter, risk);
        // before the nights counted from 31 July (day 212) backward; a frost on that very day is not after it
        return nights.isPresent()
                ? OptionalDouble.of(MIDSUMMER + 1 - nights.getAsDouble() - 0.5 + shift)
                : OptionalDouble.empty();
    }

    /** The day before which a share of all autumns already had a frost; empty where fewer have any. */
    public OptionalDouble firstAutumnFrost(double risk) {
        OptionalDouble nights = nights(noneBefore, risk);
        return nights.isPresent()
                ? OptionalDouble.of(MIDSUMMER + 2 + nights.getAsDouble() + 0.5 + shift)
                : OptionalDouble.empty();
    }

    /** Standard deviation of the last frost's day among the springs that have one; empty where hardly any has. */
    public OptionalDouble springSd() {
        return sd(noneAfter);
    }

    /** Standard deviation of the first frost's day among the autumns that have one; empty where hardly any has. */
    public OptionalDouble autumnSd() {
        return sd(noneBefore);
    }

    /** How many nights away from midsummer the chance of a frost has grown to the risk, within a night by a straight line. */
    private static OptionalDouble nights(double[] none, double risk) {
        if (risk >= any(none)) {
            return OptionalDouble.empty();
        }
        for (int night = 1; night < none.length; night++) {
            if (1 - none[night] >= risk) {
                double part = (none[night - 1] - (1 - risk)) / (none[night - 1] - none[night]);
                return OptionalDouble.of(night - 1 + Math.max(0, part));
            }
        }
        return OptionalDouble.empty();
    }

    private static OptionalDouble sd(double[] none) {
        double any = any(none);
        if (any < 0.01) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        double squares = 0;
        for (int night = 1; night < none.length; night++) {
            double share = (none[night - 1] - none[night]) / any;
            sum += share * night;
            squares += share * night * night;
        }
        return OptionalDouble.of(Math.sqrt(Math.max(0, squares - sum * sum)));
    }
}
