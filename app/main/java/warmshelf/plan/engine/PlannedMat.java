package warmshelf.plan.engine;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Band;
import warmshelf.shelf.LightAbove;

/**
 * A heat mat.
 *
 * @param places how many standard trays lie on it side by side
 * @param thermostat the set-points it can hold
 * @param watts its load on every day on which it holds anything
 * @param circuit the id of the circuit that feeds it; null when its load is of no concern
 * @param light what reaches it from above
 * @param out days on which it is out of service
 */
public record PlannedMat(
        String id,
        int places,
        Band thermostat,
        int watts,
        @Nullable String circuit,
        LightAbove light,
        List<DayRange> out) {
    public PlannedMat {
        out = List.copyOf(out);
    }

    /** A mat of whose light nothing is known. */
    public PlannedMat(String id, int places, Band thermostat, int watts, @Nullable String circuit, List<DayRange> out) {
        this(id, places, thermostat, watts, circuit, LightAbove.NOT_KNOWN, out);
    }

    public boolean servesOn(LocalDate day) {
        return out.stream().noneMatch(range -> range.contains(day));
    }
}
