package warmshelf.frost.station;

import java.util.OptionalDouble;

/**
 * One season's published days, as numbers of a 365-day year.
 *
 * @param medianDay half of the years have their frost later
 * @param ninthDay spring: nine springs in ten still freeze after it; autumn: nine in ten froze before it; may be unknown
 */
public record SeasonDays(double medianDay, OptionalDouble ninthDay) {
    /** The normal distribution's 90 % point. */
    static final double NINE_TENTHS = 1.2816;

    /** Standard deviation from year to year, as far as the two days tell it. */
    OptionalDouble yearSd() {
        return ninthDay.stream()
                .map(day -> Math.abs(day - medianDay) / NINE_TENTHS)
                .findFirst();
    }
}
