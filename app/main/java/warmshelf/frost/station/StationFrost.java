package warmshelf.frost.station;

import java.util.List;
import java.util.Optional;

/**
 * The frost dates published for one station.
 *
 * @param id the service's code, empty where the file has none
 * @param dates empty where the service gives none because frost comes in too few years
 */
public record StationFrost(
        String id, String name, double latitude, double longitude, double elevationM, Optional<Dates> dates) {

    /** Both seasons' days. */
    public record Dates(SeasonDays spring, SeasonDays autumn) {}

    /** Number of stations that have dates. */
    public static long withDates(List<StationFrost> stations) {
        return stations.stream().filter(StationFrost::hasDates).count();
    }

    boolean hasDates() {
        return dates.isPresent();
    }

    /** The days of a season; only of stations that have dates. */
    SeasonDays days(Side side) {
        Dates known = dates.orElseThrow();
        return side == Side.SPRING ? known.spring() : known.autumn();
    }
}
