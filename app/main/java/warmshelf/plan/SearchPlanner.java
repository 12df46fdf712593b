package warmshelf.plan;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.search.RatedPlan;

/** Plans by the search and the solver's bound. */
final class SearchPlanner implements SeasonPlanner {
    private static final double SECONDS_BETWEEN_PLANS = 1;

    @Override
    public Found plan(
            PlanQuestion question,
            long startingNumber,
            int seconds,
            Consumer<Progress> listener,
            BooleanSupplier cancelled) {
        Telling telling = new Telling(listener);
        RatedPlan outcome = warmshelf.plan.engine.search.Planner.plan(
                question,
                warmshelf.plan.engine.search.Planner.Manner.SEARCH,
                seconds,
                startingNumber,
                telling::tell,
                cancelled);
        return new Found(new NearbyLight(question).arranged(outcome.plan()), outcome.placedAtMost(), outcome.optimal());
    }

    /** The search tells many times a second; a plan is written out about once. */
    private static final class Telling {
        private final Consumer<Progress> listener;
        private double last = Double.NEGATIVE_INFINITY;

        Telling(Consumer<Progress> listener) {
            this.listener = listener;
        }

        void tell(warmshelf.plan.engine.search.Planner.Progress progress) {
            if (progress.seconds() - last >= SECONDS_BETWEEN_PLANS) {
                last = progress.seconds();
                listener.accept(new Progress(progress.best().get(), progress.placedAtMost(), progress.seconds()));
            }
        }
    }
}
