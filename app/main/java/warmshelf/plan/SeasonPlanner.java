package warmshelf.plan;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.SeasonPlan;

/** Whatever makes a season plan. The same question, starting number and seconds give the same plan. */
public interface SeasonPlanner {
    /**
     * How far it has come.
     *
     * @param best the best plan so far, complete: each request is placed or refused
     * @param placedAtMost what no plan can exceed
     * @param seconds since it began
     */
    record Progress(SeasonPlan best, int placedAtMost, double seconds) {}

    /**
     * The answer.
     *
     * @param optimal whether no plan places more
     */
    record Found(SeasonPlan plan, int placedAtMost, boolean optimal) {}

    /**
     * Plans.
     *
     * @param seconds how long it may take
     * @param listener told of each better plan
     * @param cancelled asked now and then; when true, the best plan so far is the answer
     */
    Found plan(
            PlanQuestion question,
            long startingNumber,
            int seconds,
            Consumer<Progress> listener,
            BooleanSupplier cancelled);
}
