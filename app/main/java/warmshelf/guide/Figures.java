package warmshelf.guide;

import warmshelf.words.Units;

/** The tables' figures in the units of one reader. */
final class Figures {
    private final Units units;
    private final PracticeTable practice;
    private final ContainerTable containers;

    Figures(Units units, PracticeTable practice, ContainerTable containers) {
        this.units = units;
        this.practice = practice;
        this.containers = containers;
    }

    Units units() {
        return units;
    }

    ContainerTable containers() {
        return containers;
    }

    /** Whether the reader measures in inches, and so in ounces and gallons. */
    boolean inches() {
        return units.length().equals("in");
    }

    /** One of two ways of saying the same: for whoever measures in inches, or in centimetres. */
    String customary(String inches, String centimetres) {
        return inches() ? inches : centimetres;
    }

    /** The figure of a row, in the reader's units. */
    Amount amount(String topic, String item) {
        PracticeRow row = practice.row(topic, item);
        return switch (row.unit()) {
            case "F" ->
                units.temperature().equals("F") ? own(row) : row.metricAmount().orElseGet(() -> own(row));
            case "in" -> inches() ? own(row) : row.metricAmount().orElseGet(() -> own(row));
            case "mm" -> inches() ? inInches(own(row)) : own(row);
            default -> own(row);
        };
    }

    private static Amount own(PracticeRow row) {
        return row.amount()
                .orElseThrow(() -> new IllegalArgumentException(
                        "practice.csv gives no figure for '%s, %s'".formatted(row.topic(), row.item())));
    }

    private static Amount inInches(Amount centimetres) {
        return new Amount(hundredths(centimetres.low()), hundredths(centimetres.high()), "in", centimetres.bound());
    }

    private static double hundredths(double centimetres) {
        return Math.round(centimetres / 2.54 * 100) / 100.0;
    }

    /** Degrees that a table's note gives beside its figure, in the reader's unit. */
    Amount fahrenheit(double low, double high) {
        boolean own = units.temperature().equals("F");
        return Amount.of(own ? low : celsius(low), own ? high : celsius(high), "°" + units.temperature());
    }

    private static double celsius(double fahrenheit) {
        return Math.round((fahrenheit - 32) * 5 / 9);
    }

    /** What a row says, where it is a figure. */
    Claim claim(String of, String topic, String item) {
        return claim(of, topic, item, amount(topic, item));
    }

    /** A figure that a row's words or note give. */
    Claim claim(String of, String topic, String item, Amount amount) {
        PracticeRow row = practice.row(topic, item);
        return new Claim(of, amount.words(), amount, row.printed(), row.source());
    }

    /** What a row says, where that is no figure, in our words. */
    Claim told(String of, String topic, String item, String says) {
        PracticeRow row = practice.row(topic, item);
        return new Claim(of, says, null, row.printed(), row.source());
    }

    String temperature(double celsius) {
        return units.temperature(celsius);
    }

    String length(double millimetres) {
        return units.length(millimetres);
    }
}
