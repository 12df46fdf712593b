package warmshelf.frost;

import java.util.List;
import java.util.Locale;

/**
 * What the surface says at one point, before it is moved to the point's own elevation.
 *
 * @param cells the grid cells between which the point lies, with their weights
 * @param referenceElevationM the elevation that the dates hold for
 * @param nearestStationKm distance from the grid to the nearest station with published dates
 * @param freezeRareShare share of near stations where a freeze comes in fewer than one year in ten
 */
public record SurfacePoint(
        List<Cell> cells,
        double referenceElevationM,
        SeasonFigures spring,
        SeasonFigures autumn,
        double nearestStationKm,
        double freezeRareShare) {

    /** One grid cell and its share of the answer. */
    public record Cell(double latitude, double longitude, double weight) {
        /** For example '46.75, -92.25 (weight 0.40)'. */
        String words() {
            return FrostSentences.SAY.gridPoint(decimals(latitude), decimals(longitude), decimals(weight));
        }

        private static String decimals(double number) {
            return String.format(Locale.ROOT, "%.2f", number);
        }
    }

    /**
     * One season's figures.
     *
     * @param medianDay day of a 365-day year
     * @param daysPer100M change of that day for each 100 m upward
     * @param stationScatterDays standard deviation between near stations and the surface
     * @param yearSdDays standard deviation from year to year
     */
    public record SeasonFigures(double medianDay, double daysPer100M, double stationScatterDays, double yearSdDays) {}
}
