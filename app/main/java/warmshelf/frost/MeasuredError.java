package warmshelf.frost;

/**
 * How far off ways of telling frost were, where that was measured. In the United States against the published dates of 4,913
 * stations; elsewhere, for this project, against 1,002 stations of the monthly climate reports of all countries.
 */
public final class MeasuredError {
    /** Nine errors in ten lie within so many standard deviations of a normal distribution. */
    private static final double NINE_IN_TEN = 1.645;
    /** From twelve monthly means in the United States: 3 days at half of 4,912 stations, so a spread of 4.5. */
    private static final double MONTHLY_SD_DAYS = 4.5;
    /** From twelve monthly means elsewhere: nine in ten within 29 days in spring, at half of them 10.5 off. */
    private static final double MONTHLY_SD_ABROAD_DAYS = 29 / NINE_IN_TEN;
    /** Nearer than this a station stands for the place itself. */
    private static final double AT_THE_PLACE_KM = 15;

    private static final double NEAR_KM = 60;
    /** From the stations around elsewhere: nine in ten within 22 days with one inside 60 km, else within 27. */
    private static final double NEAR_SD_DAYS = 22 / NINE_IN_TEN;

    private static final double FAR_SD_DAYS = 27 / NINE_IN_TEN;

    private MeasuredError() {}

    /** Whether errors that were measured in the United States hold at a point: where the bundled grid reaches. */
    public static boolean inUnitedStates(double latitude, double longitude) {
        return FrostSurface.bundled().at(latitude, longitude).isPresent();
    }

    /** How far a middle day told from a place's own twelve monthly means may be off: a standard deviation in days. */
    public static double monthlySdDays(double latitude, double longitude) {
        return inUnitedStates(latitude, longitude) ? MONTHLY_SD_DAYS : MONTHLY_SD_ABROAD_DAYS;
    }

    /** The least that a day told from stations alone, outside the United States, may be off: a standard deviation in days. */
    public static double leastSdAbroadDays(double nearestKm) {
        if (nearestKm <= AT_THE_PLACE_KM) {
            return 0;
        }
        return nearestKm <= NEAR_KM ? NEAR_SD_DAYS : FAR_SD_DAYS;
    }
}
