package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.shelf.Lamp;

/**
 * Where a place is, and when one comes by it on the round.
 *
 * @param matId the mat it is on; null: under a light
 * @param surface for example 'mat M3' or 'under the light'
 * @param lamp the lights of its shelf
 * @param walkOrder 0 for the first place of the round
 */
public record PlaceAddress(
        UUID placeId,
        UUID siteId,
        String site,
        String rack,
        int shelf,
        @Nullable UUID matId,
        String surface,
        int number,
        Lamp lamp,
        int walkOrder) {

    /** For example 'shelf 2 · mat M3 · place 1'. */
    public String onRack() {
        return SAY.onRack(shelf, surface, number);
    }
}
