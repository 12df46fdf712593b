package warmshelf.frost.evidence;

import warmshelf.frost.FrostSeason;
import warmshelf.frost.station.StationEstimate;

/**
 * Puts two tellings of one season together, each weighing as much as it is worth: by the inverse of its variance, without
 * what sets any garden apart from its neighbours, which neither can know and which is added again afterwards.
 *
 * @param season the two put together
 * @param secondShare share 0..1 that the second has in it
 */
public record SeasonBlend(FrostSeason season, double secondShare) {
    /** No telling is trusted to be better than this, in days squared. */
    private static final double LEAST_VARIANCE = 4;

    /** Puts two tellings of one season together. */
    public static SeasonBlend of(FrostSeason first, FrostSeason second) {
        double a = 1 / estimateVariance(first);
        double b = 1 / estimateVariance(second);
        double share = b / (a + b);
        double scatter = Math.sqrt(1 / (a + b) + StationEstimate.siteVariance());
        return new SeasonBlend(
                new FrostSeason(
                        mixed(first.anyFrost(), second.anyFrost(), share),
                        mixed(first.medianDay(), second.medianDay(), share),
                        mixed(first.adjustmentDays(), second.adjustmentDays(), share),
                        mixed(first.daysPer100M(), second.daysPer100M(), share),
                        mixed(first.yearSdDays(), second.yearSdDays(), share),
                        scatter,
                        mixed(first.elevationSdDays(), second.elevationSdDays(), share)),
                share);
    }

    /**
     * A thermometer in the garden itself tells of that very place, hollow and all, but only for the few years it hangs there.
     *
     * @param ownDay median of the garden's own seasons
     * @param ownSdDays standard deviation of that median
     */
    static SeasonBlend ofOwn(FrostSeason told, double ownDay, double ownSdDays) {
        double place = Math.pow(told.stationScatterDays(), 2) + Math.pow(told.elevationSdDays(), 2);
        double a = 1 / Math.max(LEAST_VARIANCE, place);
        double b = 1 / Math.max(LEAST_VARIANCE, ownSdDays * ownSdDays);
        double share = b / (a + b);
        return new SeasonBlend(
                new FrostSeason(
                        told.anyFrost(),
                        mixed(told.medianDay(), ownDay, share),
                        told.adjustmentDays(),
                        told.daysPer100M(),
                        told.yearSdDays(),
                        Math.sqrt(1 / (a + b)),
                        0),
                share);
    }

    private static double estimateVariance(FrostSeason season) {
        double scatter = season.stationScatterDays() * season.stationScatterDays();
        return Math.max(LEAST_VARIANCE, scatter - StationEstimate.siteVariance());
    }

    private static double mixed(double first, double second, double share) {
        return (1 - share) * first + share * second;
    }
}
