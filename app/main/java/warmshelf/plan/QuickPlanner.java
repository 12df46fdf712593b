package warmshelf.plan;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.plan.engine.search.Planner;

/**
 * Answers a small question while somebody waits for a page. The last answer is kept: what was shown is what is saved, also on a
 * machine so busy that the clock ended the search, and as long as nothing changes nothing is worked out anew.
 */
final class QuickPlanner implements Function<PlanQuestion, SeasonPlan> {
    private static final double SECONDS = 1;

    private final AtomicReference<@Nullable Kept> last = new AtomicReference<>();

    private record Kept(PlanQuestion question, SeasonPlan plan) {}

    @Override
    public SeasonPlan apply(PlanQuestion question) {
        Kept kept = last.get();
        if (kept == null || !kept.question().equals(question)) {
            kept = new Kept(question, Planner.quickly(question, SECONDS).plan());
            last.set(kept);
        }
        return kept.plan();
    }
}
