package warmshelf.web;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days as sentences say them. */
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
}
