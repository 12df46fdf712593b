package warmshelf.plan.engine.search;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.search.Planner.Manner;
import warmshelf.plan.engine.solver.SolverProcess;

/** Plans by an amount of work alone, so that a test gets the same plan from a slow machine as from a quick one. */
final class Steadily {
    /** Ends what hangs. No slow machine comes near it. */
    private static final double PATIENCE_SECONDS = 900;

    private Steadily() {}

    /** As much work as a plain machine does in so many seconds, however long it takes here. */
    static RatedPlan plan(PlanQuestion question, Manner manner, int secondsOfWork) {
        return plan(question, manner, secondsOfWork, SolverProcess::start);
    }

    /** The same without the solver, whose process takes longer to start than a small question to answer. */
    static RatedPlan withoutSolver(PlanQuestion question, double secondsOfWork) {
        return plan(question, Manner.SEARCH, secondsOfWork, () -> null);
    }

    private static RatedPlan plan(
            PlanQuestion question, Manner manner, double secondsOfWork, Supplier<@Nullable SolverProcess> solver) {
        Effort effort = new Effort(secondsOfWork, PATIENCE_SECONDS);
        return Planner.plan(question, manner, effort, 1, progress -> {}, () -> false, solver);
    }
}
