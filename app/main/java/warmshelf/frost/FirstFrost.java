package warmshelf.frost;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The first frost of one autumn at one threshold, as a distribution.
 *
 * @param season how its day varies, with the share of autumns that have any
 * @param year the autumn's, by the year of the spring before it
 */
public record FirstFrost(FrostSeason season, int year) {
    private static final double HALF = 0.5;

    /** The chance, 0..1, that it comes only after a day, or not at all. */
    public double chanceLaterThan(LocalDate day) {
        return 1 - season.chanceBefore(YearDay.number(day, year));
    }

    /** The day before which half of the autumns have had one; empty where fewer have any. */
    public Optional<LocalDate> usual() {
        OptionalDouble day = season.dayReachedWith(HALF);
        return day.isPresent() ? Optional.of(YearDay.in(year, day.getAsDouble())) : Optional.empty();
    }

    /** The same so many days later. */
    public FirstFrost laterBy(double days) {
        return new FirstFrost(season.movedBy(days), year);
    }
}
