package warmshelf.frost.minima;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.YearDay;

/**
 * The frost that ends a spring or opens an autumn.
 *
 * @param year the year that the season is counted for
 * @param day null when the season had no frost
 */
public record SeasonFrost(int year, @Nullable LocalDate day) {

    boolean any() {
        return day != null;
    }

    /** The day's number in a 365-day year, counted from the season's own year. */
    double number() {
        if (day == null) {
            throw new IllegalStateException("the season of %d had no frost".formatted(year));
        }
        return YearDay.number(day, year);
    }

    SeasonFrost moved(long days) {
        return day == null ? this : new SeasonFrost(year, day.plusDays(days));
    }
}
