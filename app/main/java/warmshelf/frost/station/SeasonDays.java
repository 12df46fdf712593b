package warmshelf.frost.station;

import java.util.OptionalDouble;

/**
 * One season's published days, as numbers of a 365-day year.
 *
 * @param medianDay half of the years have their frost later
 * @param ninthDay spring: nine springs in ten still freeze after it; autumn: nine in ten froze before it; may be unknown
 * @param tenthDay the same for one in ten
 */
public record SeasonDays(double medianDay, OptionalDouble ninthDay, OptionalDouble tenthDay) {
    /** The normal distribution's 90 % point. */
    static final double NINE_TENTHS = 1.2816;

    public SeasonDays(double medianDay, OptionalDouble ninthDay) {
        this(medianDay, ninthDay, OptionalDouble.empty());
    }

    /** Standard deviation from year to year, as far as the days tell it: the least-squares slope of day on normal quantile. */
    public OptionalDouble yearSd() {
        if (ninthDay.isPresent() && tenthDay.isPresent()) {
            return OptionalDouble.of(Math.abs(tenthDay.getAsDouble() - ninthDay.getAsDouble()) / (2 * NINE_TENTHS));
        }
        OptionalDouble outer = ninthDay.isPresent() ? ninthDay : tenthDay;
        return outer.stream()
                .map(day -> Math.abs(day - medianDay) / NINE_TENTHS)
                .findFirst();
    }

    /** Whether the one-in-ten day lies on the risky side of the middle and the nine-in-ten day on the other, or upon it. */
    public boolean isInOrder(Side side) {
        return side.sign() * (medianDay - ninthDay.orElse(medianDay)) >= 0
                && side.sign() * (tenthDay.orElse(medianDay) - medianDay) >= 0;
    }
}
