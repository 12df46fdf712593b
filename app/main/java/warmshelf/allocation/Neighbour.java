package warmshelf.allocation;

import java.time.LocalDate;
import java.util.UUID;

/**
 * Somebody else's stay near a place that is looked at.
 *
 * @param to the day after the last day
 * @param words for example "Priya Nair's Harbour Light (Tomato)"
 */
public record Neighbour(UUID placeId, Slot slot, LocalDate from, LocalDate to, String words) {

    /** Whether it takes any of the quarters of a spot on any of its days. */
    public boolean isInTheWayOf(PlaceAndDays spot) {
        return placeId.equals(spot.placeId())
                && (slot.mask() & spot.slot().mask()) != 0
                && from.isBefore(spot.to())
                && to.isAfter(spot.from());
    }
}
