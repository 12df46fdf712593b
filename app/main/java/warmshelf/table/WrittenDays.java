package warmshelf.table;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The days of one column. Spreadsheets write ISO dates anew in their own way when they save, as 3/31/2027 or 31/3/2027; which of
 * the two it is, the days of the whole column tell that can be read in one way only. Where none does, none is guessed.
 */
public final class WrittenDays {
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
    private static final Pattern YEAR_LAST = Pattern.compile("(\\d{1,2})([-/.])(\\d{1,2})\\2(\\d{4})");
    private static final int MONTHS = 12;

    private @Nullable String monthFirst;
    private @Nullable String dayFirst;

    /** Takes a cell of the column into account. */
    public void learn(String cell) {
        Matcher parts = YEAR_LAST.matcher(cell.strip());
        if (parts.matches() && !parts.group(2).equals(".")) {
            int first = number(parts, 1);
            int second = number(parts, 3);
            if (second > MONTHS && first <= MONTHS && monthFirst == null) {
                monthFirst = cell.strip();
            } else if (first > MONTHS && second <= MONTHS && dayFirst == null) {
                dayFirst = cell.strip();
            }
        }
    }

    /** A day that shows that months come first, where nothing shows otherwise. */
    public Optional<String> monthFirst() {
        return dayFirst == null ? Optional.ofNullable(monthFirst) : Optional.empty();
    }

    /** A day that shows that days come first, where nothing shows otherwise. */
    public Optional<String> dayFirst() {
        return monthFirst == null ? Optional.ofNullable(dayFirst) : Optional.empty();
    }

    /** The day; empty where there is none of that form, or it could be two. */
    public Optional<LocalDate> read(String cell) {
        Matcher iso = YEAR_FIRST.matcher(cell.strip());
        if (iso.matches()) {
            return day(number(iso, 1), number(iso, 2), number(iso, 3));
        }
        Matcher parts = YEAR_LAST.matcher(cell.strip());
        if (!parts.matches()) {
            return Optional.empty();
        }
        int year = number(parts, 4);
        Optional<LocalDate> byDay = day(year, number(parts, 3), number(parts, 1));
        Optional<LocalDate> byMonth = day(year, number(parts, 1), number(parts, 3));
        if (parts.group(2).equals(".") || dayFirst().isPresent()) {
            return byDay;
        }
        if (monthFirst().isPresent() || byDay.isEmpty()) {
            return byMonth;
        }
        return byMonth.isEmpty() || byMonth.equals(byDay) ? byDay : Optional.empty();
    }

    /** Whether a cell could be two days. */
    public boolean isAmbiguous(String cell) {
        return YEAR_LAST.matcher(cell.strip()).matches() && read(cell).isEmpty() && bothCouldBe(cell);
    }

    private static boolean bothCouldBe(String cell) {
        Matcher parts = YEAR_LAST.matcher(cell.strip());
        return parts.matches() && number(parts, 1) <= MONTHS && number(parts, 3) <= MONTHS;
    }

    private static Optional<LocalDate> day(int year, int month, int day) {
        try {
            return Optional.of(LocalDate.of(year, month, day));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }

    private static int number(Matcher parts, int group) {
        return Integer.parseInt(parts.group(group));
    }
}
