package warmshelf.plan.engine;

import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;

/**
 * A request that got a place.
 *
 * @param place on the mat, counted from 1
 * @param light where it goes after the mat; null when that was not asked
 */
public record PlacedStay(
        String request,
        String mat,
        int place,
        Slot slot,
        DayRange days,
        @Nullable LitStay light) {

    /** The stay on a lit shelf after the mat. */
    public record LitStay(String shelf, int place, Slot slot, DayRange days) {}
}
