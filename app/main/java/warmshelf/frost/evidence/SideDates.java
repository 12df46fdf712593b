package warmshelf.frost.evidence;

import java.util.OptionalDouble;

/**
 * What is known of one season's frost at one station.
 *
 * @param anyFrost share 0..1 of seasons with any frost; empty where it was not told
 * @param medianDay day of a 365-day year; half of the seasons with a frost have it later; empty where frost is too rare
 * @param yearSdDays standard deviation from year to year; empty where it was not told
 * @param seasons number of seasons it was counted from; empty where it was published as a normal
 */
public record SideDates(
        OptionalDouble anyFrost, OptionalDouble medianDay, OptionalDouble yearSdDays, OptionalDouble seasons) {
    /** Nothing is known. */
    public static SideDates none() {
        return new SideDates(
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
}
