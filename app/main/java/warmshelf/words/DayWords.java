package warmshelf.words;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Days as sentences say them. A stay is kept over days [from, afterLast); people are told its last day ('to Sat 5 Dec'), on which
 * it still lies there, or the day it leaves ('leaves Sun 6 Dec'), which is the day after.
 */
public final class DayWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    private DayWords() {}

    /** For example 'Tue 24 May'. */
    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** For example '24 May'. */
    public static String date(LocalDate day) {
        return DATE.format(day);
    }

    /** The days of a stay, its last one included: for example 'Tue 24 May to Sat 4 Jun'; 'Tue 24 May' where that is the only one. */
    public static String span(LocalDate from, LocalDate afterLast) {
        return from.plusDays(1).isBefore(afterLast) ? "%s to %s".formatted(day(from), lastDay(afterLast)) : day(from);
    }

    /** The last day on which it lies there: for example 'Sat 4 Jun'. */
    public static String lastDay(LocalDate afterLast) {
        return day(afterLast.minusDays(1));
    }

    /** The day on which it is there no more: for example 'leaves Sun 5 Jun'. */
    public static String leaves(LocalDate afterLast) {
        return "leaves " + day(afterLast);
    }
}
