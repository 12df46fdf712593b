package warmshelf.frost.garden;

import java.util.Locale;
import warmshelf.web.Units;

/** Heights above the sea in the length a person reads: metres, or feet for those who read inches. Stored are metres. */
final class Height {
    static final double LOWEST_M = -430;
    static final double HIGHEST_M = 6500;
    private static final double METRES_IN_A_FOOT = 0.3048;

    private Height() {}

    static boolean inFeet(Units units) {
        return units.length().equals("in");
    }

    /** 'metres' or 'feet'. */
    static String unit(Units units) {
        return inFeet(units) ? "feet" : "metres";
    }

    static double metres(double typed, Units units) {
        return inFeet(units) ? typed * METRES_IN_A_FOOT : typed;
    }

    /** The figure a person of these units reads, in whole metres or feet. */
    static long figure(double metres, Units units) {
        return Math.round(inFeet(units) ? metres / METRES_IN_A_FOOT : metres);
    }

    /** For example '1,405 ft' or '428 m'. */
    static String words(double metres, Units units) {
        return String.format(Locale.ROOT, "%,d %s", figure(metres, units), inFeet(units) ? "ft" : "m");
    }

    /** For example '46.84° N, 92.22° W, 1,405 ft above the sea'. */
    static String words(GardenPoint point, Units units) {
        return "%s, %s, %s above the sea"
                .formatted(
                        degrees(point.latitude(), "N", "S"),
                        degrees(point.longitude(), "E", "W"),
                        words(point.elevationM(), units));
    }

    private static String degrees(double value, String positive, String negative) {
        String figure = String.format(Locale.ROOT, "%.4f", Math.abs(value)).replaceAll("\\.?0+$", "");
        return "%s° %s".formatted(figure, value < 0 ? negative : positive);
    }
}
