package warmshelf.frost.garden;

import java.time.DateTimeException;
import java.time.Month;
import java.time.MonthDay;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A day and month as people write it: 24 May, May 24, 05-24, or a date whose year does not count. */
final class DayOfYear {
    private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})\\.?\\s*([a-z]{3,9})\\.?");
    private static final Pattern MONTH_FIRST = Pattern.compile("([a-z]{3,9})\\.?\\s*(\\d{1,2})\\.?");
    private static final Pattern FIGURES = Pattern.compile("(?:\\d{4}-)?(\\d{2})-(\\d{2})");

    private DayOfYear() {}

    /** The day meant; empty where the text tells none. */
    static Optional<MonthDay> read(String text) {
        String words = text.strip().toLowerCase(Locale.ROOT);
        Matcher figures = FIGURES.matcher(words);
        if (figures.matches()) {
            return day(Integer.parseInt(figures.group(1)), figures.group(2));
        }
        Matcher dayFirst = DAY_FIRST.matcher(words);
        if (dayFirst.matches()) {
            return day(month(dayFirst.group(2)), dayFirst.group(1));
        }
        Matcher monthFirst = MONTH_FIRST.matcher(words);
        return monthFirst.matches() ? day(month(monthFirst.group(1)), monthFirst.group(2)) : Optional.empty();
    }

    /** The number of the month whose English name begins so; 0 where none does. */
    private static int month(String beginning) {
        for (Month month : Month.values()) {
            if (month.name().toLowerCase(Locale.ROOT).startsWith(beginning)) {
                return month.getValue();
            }
        }
        return 0;
    }

    private static Optional<MonthDay> day(int month, String day) {
        try {
            return Optional.of(MonthDay.of(month, Integer.parseInt(day)));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
