package warmshelf.plan.engine;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is to be planned.
 *
 * @param days the days of the plan; every stay on a mat begins and ends within them
 * @param litShelves null when nobody asks where things go after the mat
 * @param requests in the order in which they came in
 */
public record PlanQuestion(
        DayRange days,
        List<CircuitFeed> circuits,
        List<PlannedMat> mats,
        @Nullable List<LitShelf> litShelves,
        List<FixedStay> fixed,
        List<Request> requests) {
    public PlanQuestion {
        circuits = List.copyOf(circuits);
        mats = List.copyOf(mats);
        litShelves = litShelves == null ? null : List.copyOf(litShelves);
        fixed = List.copyOf(fixed);
        requests = List.copyOf(requests);
    }
}
