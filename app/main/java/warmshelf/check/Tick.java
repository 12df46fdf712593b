package warmshelf.check;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.Problem;

/**
 * One tick of the round, as the phone sends it.
 *
 * @param id made by the phone or the page; the same id sent twice is kept once
 * @param finished the bag is done with
 * @param lightPlace where the tray goes under a light; null: nowhere here (taken home), or not asked
 * @param supersedes the entry this one corrects
 */
public record Tick(
        UUID id,
        EntryStep step,
        LocalDate seenOn,
        @Nullable Integer sprouted,
        @Nullable Integer moved,
        @Nullable Integer lost,
        boolean finished,
        @Nullable Problem problem,
        String note,
        @Nullable LightPlace lightPlace,
        @Nullable UUID supersedes) {

    /** Quarters of a place under a light. */
    public record LightPlace(UUID placeId, Slot slot) {}
}
