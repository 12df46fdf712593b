package warmshelf.frost.garden;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.Threshold;
import warmshelf.frost.minima.DailyMinima;
import warmshelf.frost.minima.FrostRecord;
import warmshelf.frost.minima.Hemisphere;
import warmshelf.frost.minima.StationMinima;
import warmshelf.frost.minima.StationPoint;
import warmshelf.frost.minima.WholeSeasons;

/**
 * Everything a thermometer showed.
 *
 * @param memberId whose garden it hangs in; null: it is the group's
 */
public record ThermometerRecord(
        UUID id, String name, @Nullable UUID memberId, GardenPoint point, DailyMinima minima) {

    /** A private one is for its owner and for coordinators. */
    public boolean mayBeSeenBy(UUID visitor, boolean coordinator) {
        return Thermometer.mayBeSeenBy(memberId, visitor, coordinator);
    }

    /** The same as a station's. */
    public StationMinima station() {
        StationPoint place = new StationPoint(name, point.latitude(), point.longitude(), point.elevationM());
        return new StationMinima(name, place, minima, 0);
    }

    /** Its seasons that were read from their frost on into the summer; empty while there is none. */
    public Optional<FrostRecord> frost(Threshold threshold) {
        if (minima.size() == 0) {
            return Optional.empty();
        }
        FrostRecord counted = FrostRecord.of(minima, Hemisphere.of(point.latitude()), threshold.celsius());
        FrostRecord whole = WholeSeasons.of(counted, minima);
        boolean none =
                whole.spring().seasons().isEmpty() && whole.autumn().seasons().isEmpty();
        return none ? Optional.empty() : Optional.of(whole);
    }
}
