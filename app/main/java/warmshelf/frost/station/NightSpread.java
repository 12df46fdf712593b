package warmshelf.frost.station;

/**
 * How much single nights stray from the usual minimum of their day, and how a cold night is followed by another: the standard
 * deviation grows with the year's swing and toward winter, and each night carries a share of the stray of the night before.
 *
 * <p>The constants were fitted for this project to the 50 % and 90 % dates of 500 stations drawn from the 1981-2010 US
 * climate normals; on the 4,412 others the 50 % dates were then off by the same amount (see the frost-check command).
 */
final class NightSpread {
    /** Share of its stray that a night hands on to the next. */
    static final double PERSISTENCE = 0.68;
    /** Readings are kept in whole degrees Fahrenheit, so that a published frost is a night of up to so much more. */
    static final double READING_C = 0.21;

    private static final double BASE = 2.88;
    private static final double PER_DEGREE_OF_SWING = 0.13;
    private static final double IN_WINTER = 0.68;
    private static final double IN_WINTER_PER_DEGREE = 0.0643;
    private static final double LEAST = 0.8;

    private final DailyCurve curve;
    private final double thresholdC;

    NightSpread(DailyCurve curve, double thresholdC) {
        this.curve = curve;
        this.thresholdC = thresholdC;
    }

    /** How far below the usual, in standard deviations, a frost of that day lies; negative where it is usual. */
    double frostAt(int day) {
        return (thresholdC + READING_C - curve.on(day)) / sd(day);
    }

    private double sd(int day) {
        double amplitude = curve.amplitude();
        // -1 on the warmest day to about 1 on the coldest; a year without seasons has no winter
        double winter = amplitude > 0 ? (curve.mean() - curve.on(day)) / amplitude : 0;
        return Math.max(
                LEAST,
                BASE + PER_DEGREE_OF_SWING * amplitude + winter * (IN_WINTER + IN_WINTER_PER_DEGREE * amplitude));
    }
}
