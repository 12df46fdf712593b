package warmshelf.plan.engine;

import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.allocation.Slot;

/**
 * A stay that is published or begun and therefore never moved.
 *
 * @param surface the id of the mat, or of the lit shelf when {@code lit}
 * @param place counted from 1
 * @param band the set-points it bears; null on a lit shelf
 */
public record FixedStay(
        String id,
        String surface,
        boolean lit,
        int place,
        Slot slot,
        DayRange days,
        @Nullable Band band) {}
