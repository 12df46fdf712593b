package warmshelf.plan.engine.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.NoPlaceReason;
import warmshelf.plan.engine.PlaceChange;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.Refused;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.plan.engine.search.Planner.Progress;
import warmshelf.plan.engine.solver.SolverProcess;

/** Makes a plan better: the search, then the solver a few mats at a time, then the search once more, coolly. */
final class Improvement {
    /** Looks at a place per second allotted; about half of what an old laptop does, so that the clock seldom decides. */
    private static final long WORK_A_SECOND = 12_000_000;

    /** More than this for each request has not been seen to help. */
    private static final long MOST_WORK_A_REQUEST = 1_000_000;

    /** The same where the solver lays all mats at once: it finds more in the time that is saved. */
    private static final long WORK_A_REQUEST_OF_FEW_MATS = 500_000;

    private static final double SHARE_BEFORE_PROOF = 0.2;
    private static final double PROOF_SHARE = 0.05;
    private static final double REFILL_SHARE = 0.1;
    /** Of the clock, what the solver leaves to the last search. */
    private static final double SECONDS_SHARE_BEFORE_LAST = 0.9;

    private static final double COOL = 0.7;
    private static final double WORK_SHARE_OF_LAST = 0.2;
    private static final int STEPS_BETWEEN_LOOKS = 64;
    private static final int BOUND_STEPS = 40;

    private final PlanQuestion question;
    private final Layout layout;
    private final boolean[] possible;
    private final CapacityBound bound;
    private final Prover prover;
    private final Effort effort;
    private final long startingNumber;
    private final DoubleSupplier elapsed;
    private final Consumer<Progress> listener;
    private final BooleanSupplier cancelled;
    private final long budget;
    private final int worthwhile;
    private int boundSteps;
    private int placedBySearch;

    Improvement(
            Layout layout,
            boolean[] possible,
            CapacityBound bound,
            Prover prover,
            Effort effort,
            long startingNumber,
            DoubleSupplier elapsed,
            Consumer<Progress> listener,
            BooleanSupplier cancelled) {
        question = layout.ground.question;
        this.layout = layout;
        this.possible = possible;
        this.bound = bound;
        this.prover = prover;
        this.effort = effort;
        this.startingNumber = startingNumber;
        this.elapsed = elapsed;
        this.listener = listener;
        this.cancelled = cancelled;
        worthwhile = bound.worthwhileSteps();
        long most = SolverRefill.isWhole(layout.ground) ? WORK_A_REQUEST_OF_FEW_MATS : MOST_WORK_A_REQUEST;
        budget = Math.min((long) (effort.seconds() * WORK_A_SECOND), layout.ground.asks.size() * most);
    }

    int placedBySearch() {
        return placedBySearch;
    }

    int placedAtMost() {
        return placedAtMost(layout.placed());
    }

    /** Returns whether the clock or a cancel ended it. */
    boolean run(Predicate<Score> isBestPossible) {
        boolean cutShort = search(new Search(layout, possible, startingNumber), 0, budget);
        bound.improve(worthwhile - boundSteps, layout.placed());
        cutShort |= prover.await(effort.clockSeconds() - elapsed.getAsDouble(), layout.placed(), cancelled);
        placedBySearch = layout.placed();
        prover.improve(layout);
        SolverProcess solver = prover.process();
        if (cutShort || solver == null || isBestPossible.test(layout.score())) {
            return cutShort;
        }
        cutShort = new SolverRefill(layout, possible, solver, (int) startingNumber)
                .run(
                        REFILL_SHARE * effort.seconds(),
                        () -> SECONDS_SHARE_BEFORE_LAST * effort.clockSeconds() - elapsed.getAsDouble(),
                        cancelled,
                        () -> tell(layout.placed(), 1, layout.snapshot()));
        cutShort |=
                search(new Search(layout, possible, startingNumber + 1), COOL, (long) (WORK_SHARE_OF_LAST * budget));
        return cutShort;
    }

    private boolean search(Search search, double from, long work) {
        boolean stopped = false;
        while (!stopped && search.canGoOn() && search.work() < work) {
            prover.open();
            double share = (double) search.work() / work;
            for (int i = 0; i < STEPS_BETWEEN_LOOKS; i++) {
                search.step(from + (1 - from) * share);
            }
            if (boundSteps < worthwhile) {
                bound.improve(BOUND_STEPS, search.bestScore().placed());
                boundSteps += BOUND_STEPS;
            }
            if (share >= SHARE_BEFORE_PROOF && !prover.isStarted()) {
                prover.start(
                        layout.ground,
                        search.best(),
                        effort.clockSeconds() - elapsed.getAsDouble(),
                        PROOF_SHARE * effort.seconds());
            }
            tell(search.bestScore().placed(), from + (1 - from) * share, search.best());
            stopped = cancelled.getAsBoolean() || elapsed.getAsDouble() >= effort.clockSeconds();
        }
        search.returnToBest();
        StartDayPolish.of(layout, cancelled);
        return stopped;
    }

    private int placedAtMost(int placed) {
        return Math.min(bound.bound(), prover.bound(placed));
    }

    private void tell(int placed, double share, @Nullable TrialPlacement[] best) {
        listener.accept(new Progress(placed, placedAtMost(placed), elapsed.getAsDouble(), share, () -> soFar(best)));
    }

    /** A plan in the middle of the search, whose refusals have not been looked into. */
    private SeasonPlan soFar(@Nullable TrialPlacement[] best) {
        Layout plan = new Layout(layout.ground);
        plan.restore(best);
        List<Refused> refused = new ArrayList<>();
        for (IndexedRequest ask : layout.ground.asks) {
            if (plan.spot(ask.index()) == null) {
                String id = question.requests().get(ask.index()).id();
                refused.add(new Refused(id, new NoPlaceReason.NotFoundYet(), new PlaceChange.NothingProposed()));
            }
        }
        return new SeasonPlan(Plans.placed(plan), SetPointRuns.spans(plan), refused);
    }
}
