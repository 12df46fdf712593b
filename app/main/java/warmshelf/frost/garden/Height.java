package warmshelf.frost.garden;

import java.util.Locale;
import warmshelf.words.Units;

/** Heights above the sea in the length a person reads: metres, or feet for those who read inches. Stored are metres. */
public final class Height {
    public static final double LOWEST_M = -430;
    public static final double HIGHEST_M = 6500;

    private Height() {}

    /** 'metres' or 'feet'. */
    public static String unit(Units units) {
        return units.inInches() ? "feet" : "metres";
    }

    public static double metres(double typed, Units units) {
        return units.inInches() ? typed * Units.METRES_PER_FOOT : typed;
    }

    /** The figure a person of these units reads, in whole metres or feet. */
    public static long figure(double metres, Units units) {
        return Math.round(units.inInches() ? metres / Units.METRES_PER_FOOT : metres);
    }

    /** For example '46.84° N, 92.22° W, 1,405 ft above the sea'. */
    public static String words(GardenPoint point, Units units) {
        return "%s, %s, %s above the sea"
                .formatted(
                        degrees(point.latitude(), "N", "S"),
                        degrees(point.longitude(), "E", "W"),
                        units.height(point.elevationM()));
    }

    private static String degrees(double value, String positive, String negative) {
        String figure = String.format(Locale.ROOT, "%.4f", Math.abs(value)).replaceAll("\\.?0+$", "");
        return "%s° %s".formatted(figure, value < 0 ? negative : positive);
    }
}
