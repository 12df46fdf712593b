package warmshelf.timeline;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import warmshelf.crop.CelsiusRange;

/** Dates and temperatures as the sentences of a timeline write them. */
final class Words {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

    private Words() {}

    /** For example '24 May'. */
    static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** Both units, because the same sentence is read by everyone: '26 °C (79 °F)'. */
    static String temperature(double celsius) {
        return "%d °C (%d °F)".formatted(Math.round(celsius), fahrenheit(celsius));
    }

    /** For example '24–30 °C (75–86 °F)'. */
    static String temperatures(CelsiusRange range) {
        return "%d–%d °C (%d–%d °F)"
                .formatted(
                        Math.round(range.low()),
                        Math.round(range.high()),
                        fahrenheit(range.low()),
                        fahrenheit(range.high()));
    }

    /** For example '1 day', '9 days'. */
    static String days(long count) {
        return count == 1 ? "1 day" : count + " days";
    }

    /** For example '9 to 11 weeks', '8 weeks'. */
    static String weeks(int least, int most) {
        return least == most ? least + " weeks" : least + " to " + most + " weeks";
    }

    private static long fahrenheit(double celsius) {
        return Math.round(celsius * 9 / 5 + 32);
    }
}
