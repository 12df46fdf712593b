package warmshelf.guide;

import java.util.List;
import warmshelf.words.LengthUnit;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/**
 * The reference tables' figures, each by the name of its row, in the units of one reader. Texts take every figure from here, so that it
 * stands in one table and is quoted everywhere.
 */
public final class Figures {

    private static final List<String> SPELLED = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    private final Units units;
    private final PracticeTable practice;

    Figures(Units units, PracticeTable practice) {
        this.units = units;
        this.practice = practice;
    }

    /** The figures of the bundled tables. */
    public static Figures in(Units units) {
        return new Figures(units, PracticeTable.bundled());
    }

    PracticeRow row(String topic, String item) {
        return practice.row(topic, item);
    }

    /** Whether the reader measures in inches, and so in ounces and gallons. */
    public boolean inches() {
        return units.inInches();
    }

    /** For example '10–15 cm'; a row without a figure as it is printed. */
    public String of(String topic, String item) {
        PracticeRow row = row(topic, item);
        return row.amount().isEmpty() ? row.value() : amount(row).words();
    }

    /** The smaller of a row's two figures with its unit, for example '10 cm'. */
    public String least(String topic, String item) {
        return amount(topic, item).least().words();
    }

    /** The larger of a row's two figures with its unit. */
    public String most(String topic, String item) {
        return amount(topic, item).most().words();
    }

    /** Without its unit, for example '14 to 16'. */
    public String number(String topic, String item) {
        Amount amount = amount(topic, item);
        return joined(amount.lowFigure(), amount.highFigure(), "to");
    }

    /** The smaller of a row's two figures without its unit. */
    public String leastNumber(String topic, String item) {
        return amount(topic, item).lowFigure();
    }

    /** The larger of a row's two figures without its unit. */
    public String mostNumber(String topic, String item) {
        return amount(topic, item).highFigure();
    }

    /** In words without its unit, for example 'two to three'. */
    public String spelled(String topic, String item) {
        return spelled(topic, item, "to");
    }

    /** In words without its unit, its two figures joined by a word of one's own, for example 'two or three'. */
    public String spelled(String topic, String item, String joint) {
        Amount amount = amount(topic, item);
        return joined(spelled(amount.low()), spelled(amount.high()), joint);
    }

    /** Who says what a row of the table of practice says. */
    public String source(String topic, String item) {
        return row(topic, item).source().title();
    }

    /** The larger of a row's two figures in words without its unit. */
    public String spelledMost(String topic, String item) {
        return spelled(amount(topic, item).high());
    }

    /** The smaller of a row's two figures in words without its unit. */
    public String spelledLeast(String topic, String item) {
        return spelled(amount(topic, item).low());
    }

    private static String joined(String low, String high, String joint) {
        return low.equals(high) ? low : low + " " + joint + " " + high;
    }

    private static String spelled(double number) {
        if (number != Math.rint(number) || number < 0 || number >= SPELLED.size()) {
            throw new IllegalArgumentException(number + " is not spelled out in a text");
        }
        return SPELLED.get((int) number);
    }

    /** A row's figure times another's of its topic, for example a seed's thickness times the rule for its depth. */
    public String times(String topic, String item, String factor) {
        return times(topic, item, factor, factor);
    }

    /** From the least that one factor makes of a row's figure to the most that another makes of it. */
    public String times(String topic, String item, String least, String most) {
        Amount figure = amount(topic, item);
        return new Amount(
                        figure.low() * amount(topic, least).low(),
                        figure.high() * amount(topic, most).high(),
                        figure.unit(),
                        figure.bound())
                .words();
    }

    /** The figure of a row, in the reader's units. */
    Amount amount(String topic, String item) {
        return amount(row(topic, item));
    }

    private Amount amount(PracticeRow row) {
        Amount own = row.amount()
                .orElseThrow(() -> new IllegalArgumentException(
                        "no figure is given for '%s, %s'".formatted(row.topic(), row.item())));
        Amount metric = row.metricAmount().orElse(own);
        return switch (row.unit()) {
            case "C" -> degrees(own);
            case "F" -> units.inFahrenheit() ? own : metric;
            case "mm" -> inches() ? inInches(own) : own;
            default -> inches() ? own : metric;
        };
    }

    private Amount degrees(Amount celsius) {
        return new Amount(units.degrees(celsius.low()), units.degrees(celsius.high()), units.degree(), celsius.bound());
    }

    private static Amount inInches(Amount centimetres) {
        return new Amount(hundredths(centimetres.low()), hundredths(centimetres.high()), "in", centimetres.bound());
    }

    private static double hundredths(double centimetres) {
        return Numbers.hundredths(centimetres * LengthUnit.CENTIMETRES.millimetres() / LengthUnit.INCHES.millimetres());
    }
}
