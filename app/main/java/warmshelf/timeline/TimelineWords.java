package warmshelf.timeline;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates and days as the sentences of a timeline write them. */
final class TimelineWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

    private TimelineWords() {}

    /** For example '24 May'. */
    static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** For example '1 day', '9 days'. */
    static String days(long count) {
        return count == 1 ? "1 day" : count + " days";
    }

    /** For example '9 to 11 weeks', '8 weeks'. */
    static String weeks(int least, int most) {
        return least == most ? least + " weeks" : least + " to " + most + " weeks";
    }
}
