package warmshelf.allocation;

import java.time.LocalDate;
import java.util.UUID;

/**
 * A sowing lying on quarters of a place.
 *
 * @param kind 'mat' or 'lit'
 * @param where for example 'Hall cellar · Rack North · shelf 2 · mat M3 · place 1, left half'
 * @param to the day after the last day
 */
public record Stay(
        UUID id,
        UUID sowingId,
        UUID placeId,
        String kind,
        String where,
        Slot slot,
        LocalDate from,
        LocalDate to,
        int version) {

    public boolean isOnMat() {
        return kind.equals("mat");
    }

    public boolean covers(LocalDate day) {
        return !day.isBefore(from) && day.isBefore(to);
    }

    public boolean isBegunBy(LocalDate day) {
        return !day.isBefore(from);
    }
}
