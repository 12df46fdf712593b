package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import java.util.Locale;
import warmshelf.words.Units;

/** Heights above the sea in the length a person reads: metres, or feet for those who read inches. Stored are metres. */
public final class Height {
    public static final double LOWEST_M = -430;
    public static final double HIGHEST_M = 6500;

    private Height() {}

    /** 'metres' or 'feet'. */
    public static String unit(Units units) {
        return units.inInches() ? SAY.feet() : SAY.metres();
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
        return SAY.pointIs(
                point.latitude() < 0 ? SAY.south(figure(point.latitude())) : SAY.north(figure(point.latitude())),
                point.longitude() < 0 ? SAY.west(figure(point.longitude())) : SAY.east(figure(point.longitude())),
                units.height(point.elevationM()));
    }

    private static String figure(double degrees) {
        return String.format(Locale.ROOT, "%.4f", Math.abs(degrees)).replaceAll("\\.?0+$", "");
    }
}
