package warmshelf.frost.garden;

import java.util.Locale;
import warmshelf.web.Units;

/**
 * Temperatures of nights as people read them off, to a tenth. Stored are tenths of a degree Celsius, as services round
 * Fahrenheit, so that 28 °F is -2.2 °C and counts as a killing frost.
 */
final class Degrees {
    static final double LOWEST_C = -60;
    static final double HIGHEST_C = 45;
    private static final double HALF_A_TENTH_C_IN_F = 0.0901;

    private Degrees() {}

    static boolean fahrenheit(Units units) {
        return units.temperature().equals("F");
    }

    /** What was typed in a person's units, in Celsius. */
    static double celsius(double typed, Units units) {
        return Math.round((fahrenheit(units) ? (typed - 32) / 1.8 : typed) * 10) / 10.0;
    }

    /**
     * The figure that a person of these units reads, in tenths. A tenth of a degree Celsius is nearly two of Fahrenheit: where
     * it may stand for a whole or half degree Fahrenheit it is shown as that, as thermometers are read.
     */
    static double figure(double celsius, Units units) {
        double figure = fahrenheit(units) ? celsius * 1.8 + 32 : celsius;
        double half = Math.round(2 * figure) / 2.0;
        boolean isHalf = fahrenheit(units) && Math.abs(figure - half) <= HALF_A_TENTH_C_IN_F;
        // adding nothing turns a negative zero into a plain one
        return isHalf ? half : Math.round(figure * 10) / 10.0 + 0.0;
    }

    /** For example '28.5 °F' or '-2.0 °C'. */
    static String words(double celsius, Units units) {
        return typed(celsius, units) + " °" + units.temperature();
    }

    /** The same without the unit, as it stands in a field. */
    static String typed(double celsius, Units units) {
        return String.format(Locale.ROOT, "%.1f", figure(celsius, units));
    }

    /** A difference of temperatures, for example '18 °F' for ten degrees Celsius. */
    static String difference(double celsius, Units units) {
        return "%d °%s".formatted(Math.round(fahrenheit(units) ? celsius * 1.8 : celsius), units.temperature());
    }
}
