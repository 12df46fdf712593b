package warmshelf.words;

import java.util.Locale;
import java.util.stream.LongStream;

/**
 * The units a person reads. Stored figures are always degrees Celsius and millimetres.
 *
 * @param length whoever reads inches reads feet, miles and US quarts too
 */
public record Units(TemperatureUnit temperature, LengthUnit length) {

    /** From here on inches are nearer to a quarter than to an eighth. */
    private static final double LEAST_QUARTER = 0.1875;

    private static final double LEAST_EIGHTH = 0.0625;
    private static final double EIGHTH = 0.125;
    public static final double METRES_PER_FOOT = 0.3048;
    private static final double KILOMETRES_PER_MILE = 1.609344;

    /** A US liquid quart: a quarter of 231 cubic inches, so 57.75 times 2.54³ ml (NIST Handbook 44, Appendix C). */
    public static final double ML_PER_QUART = 946.352946;

    public static final double ML_PER_FLUID_OUNCE = ML_PER_QUART / 32;

    private static final int SMALL_ML = 500;
    private static final double HALF_A_TENTH_C_IN_F = 0.0901;
    private static final int ROUND_FIGURE = 5;

    public static final Units METRIC = new Units(TemperatureUnit.CELSIUS, LengthUnit.CENTIMETRES);

    /** As in the United States. */
    public static final Units AMERICAN = new Units(TemperatureUnit.FAHRENHEIT, LengthUnit.INCHES);

    /**
     * The units as the database and forms keep them.
     *
     * @param letter 'C' or 'F'
     * @param word 'cm' or 'in'
     * @throws IllegalArgumentException for any other
     */
    public static Units of(String letter, String word) {
        return new Units(
                TemperatureUnit.withLetter(letter)
                        .orElseThrow(() -> new IllegalArgumentException("no unit of temperature is " + letter)),
                LengthUnit.withWord(word)
                        .orElseThrow(() -> new IllegalArgumentException("no unit of length is " + word)));
    }

    public boolean inFahrenheit() {
        return temperature == TemperatureUnit.FAHRENHEIT;
    }

    public boolean inInches() {
        return length == LengthUnit.INCHES;
    }

    /** '°C' or '°F'. */
    public String degree() {
        return temperature.sign();
    }

    /** For example '26 °C' or '79 °F'. */
    public String temperature(double celsius) {
        return degrees(celsius) + " " + degree();
    }

    /** To a tenth of a degree Celsius or a whole one Fahrenheit, for example '-2.2 °C' or '28 °F'. */
    public String fineTemperature(double celsius) {
        return inFahrenheit() ? temperature(celsius) : trimmed(celsius, 1).replace('-', '−') + " °C";
    }

    /** For example '24–30 °C'; '20 °C' where both ends read the same. */
    public String temperatureRange(double lowC, double highC) {
        return degrees(lowC) == degrees(highC) ? temperature(highC) : degrees(lowC) + "–" + temperature(highC);
    }

    /**
     * The whole degrees a person of these units reads or types for a temperature. A whole degree Celsius, as bands are given and
     * plans set mats, stands for all that rounds to it: in Fahrenheit it is the roundest figure of those, as the trade says 24
     * to 27 °C for 75 to 80 °F, so that what people type in fives comes back as it was typed.
     */
    public long degrees(double celsius) {
        if (!inFahrenheit()) {
            return Math.round(celsius);
        }
        long nearest = Math.round(temperature.fromCelsius(celsius));
        if (celsius != Math.rint(celsius)) {
            return nearest;
        }
        return LongStream.rangeClosed(nearest - 1, nearest + 1)
                .filter(each -> each % ROUND_FIGURE == 0 && Math.round(temperature.toCelsius((double) each)) == celsius)
                .findFirst()
                .orElse(nearest);
    }

    /** The temperature in °C, to a tenth, that a person of these units means by a number. */
    public double celsiusOf(double typed) {
        return Numbers.tenths(temperature.toCelsius(typed));
    }

    /**
     * The number a person of these units types for a temperature, to a tenth of a degree. A tenth of a degree Celsius is nearly
     * two of Fahrenheit: where it may stand for a whole or half degree Fahrenheit it is that, as thermometers are read.
     */
    public double typedTemperature(double celsius) {
        double number = temperature.fromCelsius(celsius);
        double half = Math.round(2 * number) / 2.0;
        boolean mayBeHalf = inFahrenheit() && Math.abs(number - half) <= HALF_A_TENTH_C_IN_F;
        // adding nothing turns a negative zero into a plain one
        return mayBeHalf ? half : Numbers.tenths(number) + 0.0;
    }

    /** A difference of temperatures, for example '18 °F' for ten degrees Celsius. */
    public String temperatureDifference(double celsius) {
        return "%d %s".formatted(Math.round(temperature.differenceFromCelsius(celsius)), degree());
    }

    /**
     * The temperature in °C, to a tenth, that a person of these units means by a whole degree.
     *
     * @param stands the temperature, in °C, that they were shown; typed as it was shown it stays what it is
     */
    public double celsiusOf(int typed, double stands) {
        return degrees(stands) == typed ? stands : celsiusOf(typed);
    }

    /** The length in millimetres, to a tenth, that a person of these units means by a number. */
    public double millimetresOf(double typed) {
        return Numbers.tenths(typed * length.millimetres());
    }

    /** The number a person of these units types for a length, to a hundredth. */
    public double typedLength(double millimetres) {
        return Numbers.hundredths(millimetres / length.millimetres());
    }

    /** The measure of volume that a person of these units reads: litres, or US quarts where lengths are inches. */
    public String volumeWord() {
        return inInches() ? "quarts" : "litres";
    }

    /** For example '3.2 litres' or '3.4 quarts', whole ones from ten on; below half a litre '250 ml' or '8.5 fl oz' (US). */
    public String volume(double millilitres) {
        if (millilitres < SMALL_ML) {
            return inInches()
                    ? trimmed(millilitres / ML_PER_FLUID_OUNCE, 1) + " fl oz"
                    : Math.round(millilitres) + " ml";
        }
        double measured = typedVolume(millilitres);
        String number = trimmed(measured, measured < 10 ? 1 : 0);
        String word = volumeWord();
        return number + " " + (number.equals("1") ? word.substring(0, word.length() - 1) : word);
    }

    /** The millilitres that a person of these units means by a number of litres or quarts. */
    public double millilitresOf(double typed) {
        return Numbers.tenths(typed * (inInches() ? ML_PER_QUART : 1000));
    }

    /** The number of litres or quarts, to a hundredth, for a volume. */
    public double typedVolume(double millilitres) {
        return Numbers.hundredths(millilitres / (inInches() ? ML_PER_QUART : 1000));
    }

    /** For example '0.6 cm' or '¼ in'. Nobody measures finer than an eighth of an inch. */
    public String length(double millimetres) {
        if (inInches()) {
            return Inches.words(roundedInches(millimetres / length.millimetres())) + " in";
        }
        return trimmed(millimetres / length.millimetres(), 1) + " cm";
    }

    /** A height above the sea, for example '300 m' or '984 ft'. */
    public String height(double metres) {
        return inInches()
                ? String.format(Locale.ROOT, "%,d ft", Math.round(metres / METRES_PER_FOOT))
                : String.format(Locale.ROOT, "%,d m", Math.round(metres));
    }

    /** A way along the ground, for example '12 km' or '7 miles'. */
    public String distance(double kilometres) {
        if (!inInches()) {
            return String.format(Locale.ROOT, "%,d km", Math.round(kilometres));
        }
        long miles = Math.round(kilometres / KILOMETRES_PER_MILE);
        return Counted.of(miles, "mile", "miles");
    }

    /** As people say inches: halves from two inches up, quarters below, and an eighth where less than a quarter is meant. */
    private static double roundedInches(double inches) {
        if (inches < LEAST_QUARTER) {
            return inches < LEAST_EIGHTH ? inches : EIGHTH;
        }
        return inches >= 1.9 ? Math.round(inches * 2) / 2.0 : Math.round(inches * 4) / 4.0;
    }

    private static String trimmed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
