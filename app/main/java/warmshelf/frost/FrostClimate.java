package warmshelf.frost;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/** When frost ends in spring and begins in autumn at one point, with what that rests on. Frost is air at or below 0 C. */
public record FrostClimate(
        String place,
        double latitude,
        double longitude,
        double elevationM,
        FrostSeason spring,
        FrostSeason autumn,
        FrostEvidence evidence) {

    /**
     * The day after which a share {@code risk} of springs still has a frost; empty when fewer springs than that have any.
     * In warm places the day may lie in the winter before the year.
     */
    public Optional<LocalDate> lastSpringFrost(double risk, int year) {
        return dated(spring.dayExceededWith(risk), year);
    }

    /** The chance, 0 to 1, that the spring of a year still has a frost after a day. */
    public double chanceOfFrostAfter(LocalDate day, int year) {
        return spring.chanceAfter(YearDay.number(day, year));
    }

    /**
     * The day before which a share {@code risk} of autumns already had a frost; empty when fewer autumns than that have
     * any. In warm places the day may lie in the winter after the year.
     */
    public Optional<LocalDate> firstAutumnFrost(double risk, int year) {
        return dated(autumn.dayReachedWith(risk), year);
    }

    /** The first frost of the autumn after that year's spring. */
    public FirstFrost firstFrost(int year) {
        return new FirstFrost(autumn, year);
    }

    private static Optional<LocalDate> dated(OptionalDouble day, int year) {
        return day.isPresent() ? Optional.of(YearDay.in(year, day.getAsDouble())) : Optional.empty();
    }
}
