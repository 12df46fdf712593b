package warmshelf.words;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Degrees as a person reads them. Stored are degrees Celsius; the way from one to the other stands here alone. */
public enum TemperatureUnit {
    CELSIUS("C", "Celsius", 1, 1, 0),
    /** Nine degrees of it are five of Celsius, and water freezes at 32. */
    FAHRENHEIT("F", "Fahrenheit", 9, 5, 32);

    private final String letter;
    private final String scale;
    private final int degrees;
    private final int perCelsius;
    private final int atFreezing;

    TemperatureUnit(String letter, String scale, int degrees, int perCelsius, int atFreezing) {
        this.letter = letter;
        this.scale = scale;
        this.degrees = degrees;
        this.perCelsius = perCelsius;
        this.atFreezing = atFreezing;
    }

    /** The unit with this letter; empty where there is none. */
    public static Optional<TemperatureUnit> withLetter(String letter) {
        return Arrays.stream(values())
                .filter(unit -> unit.letter.equals(letter))
                .findFirst();
    }

    /** The letters of all of them. */
    public static List<String> letters() {
        return Arrays.stream(values()).map(TemperatureUnit::letter).toList();
    }

    /** 'C' or 'F', as the database, forms and phones keep it. */
    public String letter() {
        return letter;
    }

    /** 'Celsius' or 'Fahrenheit'. */
    public String scale() {
        return scale;
    }

    /** '°C' or '°F'. */
    public String sign() {
        return "°" + letter;
    }

    /** The number in this unit for a temperature in °C, not rounded. */
    public double fromCelsius(double celsius) {
        return differenceFromCelsius(celsius) + atFreezing;
    }

    /** The temperature in °C for a number in this unit, not rounded. */
    public double toCelsius(double number) {
        return differenceToCelsius(number - atFreezing);
    }

    /** The degrees of this unit in a difference of temperatures in degrees Celsius, not rounded. */
    public double differenceFromCelsius(double celsius) {
        return celsius * degrees / perCelsius;
    }

    /** The degrees Celsius in a difference of temperatures in this unit, not rounded. */
    public double differenceToCelsius(double difference) {
        return difference * perCelsius / degrees;
    }
}
