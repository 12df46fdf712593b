package warmshelf.allocation;

import java.time.LocalDate;
import java.util.UUID;

/**
 * Free room under a light.
 *
 * @param rack the name of its rack, which no other at its site has
 * @param freeUntil the day on which someone else's stay begins, or the end of the days looked at
 */
public record LitPlace(UUID placeId, UUID siteId, String rack, String where, Slot slot, LocalDate freeUntil) {
    LitPlace with(Slot otherSlot, LocalDate otherFreeUntil) {
        return new LitPlace(placeId, siteId, rack, where, otherSlot, otherFreeUntil);
    }

    /** What a form sends to name this room. */
    public String key() {
        return placeId + "/" + slot.firstQuarter();
    }
}
