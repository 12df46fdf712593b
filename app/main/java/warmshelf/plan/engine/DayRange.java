package warmshelf.plan.engine;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Days in a row.
 *
 * @param to the day after the last
 */
public record DayRange(LocalDate from, LocalDate to) {
    public DayRange {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("a range of days needs at least one, was %s to %s".formatted(from, to));
        }
    }

    public int length() {
        return (int) ChronoUnit.DAYS.between(from, to);
    }

    public boolean contains(LocalDate day) {
        return !day.isBefore(from) && day.isBefore(to);
    }

    public boolean contains(DayRange other) {
        return !other.from.isBefore(from) && !other.to.isAfter(to);
    }

    public boolean overlaps(DayRange other) {
        return from.isBefore(other.to) && other.from.isBefore(to);
    }
}
