package warmshelf.words;

/**
 * Temperatures of nights as people read them off, to a tenth. Stored are tenths of a degree Celsius, as services round
 * Fahrenheit, so that 28 °F is -2.2 °C and counts as a killing frost.
 */
public final class Degrees {
    public static final double LOWEST_C = -60;
    public static final double HIGHEST_C = 45;

    private Degrees() {}

    /** What was typed in a person's units, in Celsius. */
    public static double celsius(double typed, Units units) {
        return units.celsiusOf(typed);
    }

    /** The figure that a person of these units reads, in tenths. */
    public static double figure(double celsius, Units units) {
        return units.typedTemperature(celsius);
    }

    /** For example '28.5 °F' or '-2.0 °C'. */
    public static String words(double celsius, Units units) {
        return typed(celsius, units) + " " + units.degree();
    }

    /** The same without the unit, as it stands in a field. */
    public static String typed(double celsius, Units units) {
        return Numbers.oneDecimal(figure(celsius, units));
    }
}
