package warmshelf.frost.minima;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a station's daily minima say about frost: a frost day is one whose minimum is at or below the threshold.
 *
 * @param thresholdC 0 for any frost, -2.2 for a killing one, 2.2 for frost on the ground under still, clear skies
 * @param yearsWithoutReading whole years missing between the first and the last
 */
public record FrostRecord(
        Hemisphere hemisphere,
        double thresholdC,
        FrostSide spring,
        FrostSide autumn,
        List<Integer> yearsWithoutReading) {

    /**
     * Counts the seasons of a record.
     *
     * @throws IllegalArgumentException when there is no minimum at all
     */
    public static FrostRecord of(DailyMinima minima, Hemisphere hemisphere, double thresholdC) {
        if (minima.size() == 0) {
            throw new IllegalArgumentException("a record of no days tells nothing");
        }
        FrostSeasons seasons = new FrostSeasons(minima, hemisphere, thresholdC);
        return new FrostRecord(hemisphere, thresholdC, seasons.springs(), seasons.autumns(), gaps(minima));
    }

    /**
     * Counts the seasons of a station.
     *
     * @param latitude null to take the file's own, or else to tell the half of the world by its warmer months
     */
    public static FrostRecord of(StationMinima station, @Nullable Double latitude, double thresholdC) {
        StationPoint point = station.point();
        Double known = latitude == null && point != null ? (Double) point.latitude() : latitude;
        Hemisphere hemisphere = known == null ? Hemisphere.of(station.minima()) : Hemisphere.of(known);
        return of(station.minima(), hemisphere, thresholdC);
    }

    private static List<Integer> gaps(DailyMinima minima) {
        List<Integer> gaps = new ArrayList<>();
        for (int year = minima.years().first(); year < minima.years().last(); year++) {
            if (!minima.years().contains(year)) {
                gaps.add(year);
            }
        }
        return List.copyOf(gaps);
    }
}
