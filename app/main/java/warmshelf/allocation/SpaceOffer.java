package warmshelf.allocation;

import java.time.LocalDate;
import java.util.UUID;

/**
 * Space that would suit a request.
 *
 * @param placeNumber 1 for the mat's first place
 * @param warm the mat's set-points, from the first day to the last
 * @param asked the set-point on days on which the mat is not set yet
 * @param shiftDays days after (or, negative, before) the ideal start
 */
public record SpaceOffer(
        MatSpace mat, UUID placeId, int placeNumber, Slot slot, WarmDays warm, double asked, int shiftDays) {

    public LocalDate from() {
        return warm.from();
    }

    /** The day after the last day. */
    public LocalDate to() {
        return warm.to();
    }

    public PlaceAndDays spot() {
        return new PlaceAndDays(placeId, slot, warm.from(), warm.to());
    }
}
