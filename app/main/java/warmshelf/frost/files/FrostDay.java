package warmshelf.frost.files;

import org.jspecify.annotations.Nullable;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;

/**
 * One station's frost of one season at one threshold.
 *
 * @param anyFrost share of seasons with any frost; null: not told
 * @param medianDay number of a 365-day year; half of the seasons with a frost have it later; null: too rare for a date
 * @param yearSdDays standard deviation from year to year; null: not told
 * @param seasons number of seasons it was counted from; null: published as a normal
 */
public record FrostDay(
        Threshold threshold,
        Side side,
        @Nullable Double anyFrost,
        @Nullable Double medianDay,
        @Nullable Double yearSdDays,
        @Nullable Integer seasons) {

    /** A freeze in fewer than one year in ten: the services do not say in how many, the middle is taken. */
    static final double ANY_FROST_WHERE_RARE = 0.05;

    /** A season in which frost is so rare that the service gives no date. */
    static FrostDay rare(Threshold threshold, Side side) {
        return new FrostDay(threshold, side, ANY_FROST_WHERE_RARE, null, null, null);
    }
}
