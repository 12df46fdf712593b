package warmshelf.frost.station;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The frost dates published for one station.
 *
 * @param id the service's code, empty where the file has none
 * @param dates empty where the service gives none because frost comes in too few years
 * @param ownSdDays how well its own dates are known, a standard deviation in days; 0 for a published normal
 */
public record StationFrost(
        String id,
        String name,
        double latitude,
        double longitude,
        double elevationM,
        Optional<Dates> dates,
        double ownSdDays) {

    /** A station whose dates are normals of many years. */
    public StationFrost(
            String id, String name, double latitude, double longitude, double elevationM, Optional<Dates> dates) {
        this(id, name, latitude, longitude, elevationM, dates, 0);
    }

    /** A season's days from its median and its spread from year to year. */
    public static SeasonDays days(double medianDay, OptionalDouble yearSdDays, Side side) {
        return new SeasonDays(
                medianDay,
                yearSdDays.isPresent()
                        ? OptionalDouble.of(medianDay - side.sign() * SeasonDays.NINE_TENTHS * yearSdDays.getAsDouble())
                        : OptionalDouble.empty());
    }

    /** Both seasons' days. */
    public record Dates(SeasonDays spring, SeasonDays autumn) {}

    /** Number of stations that have dates. */
    public static long withDates(List<StationFrost> stations) {
        return stations.stream().filter(StationFrost::hasDates).count();
    }

    /** The median day of a season; only of stations that have dates. */
    public double medianDay(Side side) {
        return days(side).medianDay();
    }

    public boolean hasDates() {
        return dates.isPresent();
    }

    /** The days of a season; only of stations that have dates. */
    SeasonDays days(Side side) {
        Dates known = dates.orElseThrow();
        return side == Side.SPRING ? known.spring() : known.autumn();
    }
}
