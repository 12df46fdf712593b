package warmshelf.allocation;

import java.time.LocalDate;
import java.util.UUID;

/**
 * Where and when a sowing is to lie.
 *
 * @param to the day after the last day
 */
public record PlaceAndDays(UUID placeId, Slot slot, LocalDate from, LocalDate to) {
    public PlaceAndDays {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("a stay must last at least a day, was %s to %s".formatted(from, to));
        }
    }

    /** The same quarters on one day. */
    PlaceAndDays on(LocalDate day) {
        return new PlaceAndDays(placeId, slot, day, day.plusDays(1));
    }
}
