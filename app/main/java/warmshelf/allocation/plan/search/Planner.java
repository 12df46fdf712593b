package warmshelf.allocation.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import warmshelf.allocation.plan.FixedStays;
import warmshelf.allocation.plan.PlanChecker;
import warmshelf.allocation.plan.PlanQuestion;
import warmshelf.allocation.plan.Refused;
import warmshelf.allocation.plan.SeasonPlan;
import warmshelf.allocation.plan.solver.SolverProcess;

/**
 * Plans a season. The same question, seed and seconds give the same plan on every machine: seconds are turned into an amount
 * of work, and the clock only stops what a slow or busy machine cannot finish in that time ({@link Outcome#cutShort}).
 */
public final class Planner {
    /** Looks at a place per second allotted; about half of what an old laptop does, so that the clock seldom decides. */
    private static final long WORK_A_SECOND = 12_000_000;

    /** More than this for each request has not been seen to help. */
    private static final long MOST_WORK_A_REQUEST = 300_000;

    private static final double SHARE_BEFORE_PROOF = 0.2;
    private static final double PROOF_SHARE = 0.05;
    private static final double REFILL_SHARE = 0.1;
    private static final int STEPS_BETWEEN_LOOKS = 64;
    private static final int BOUND_STEPS = 40;

    /** How to plan. */
    public enum Manner {
        SEARCH,
        FIRST_COME,
        GREEDY
    }

    /**
     * How far it has come.
     *
     * @param placed requests placed in the best plan so far
     * @param placedAtMost what no plan can exceed
     * @param share of the work allotted that is done, 0..1
     * @param best makes that plan; to be asked only while the listener is told
     */
    public record Progress(int placed, int placedAtMost, double seconds, double share, Supplier<SeasonPlan> best) {}

    private final PlanQuestion question;
    private final Ground ground;
    private final boolean[] possible;
    private final long started = System.nanoTime();
    private int placedBySearch;

    private Planner(PlanQuestion question) {
        this.question = question;
        ground = new Ground(question);
        possible = Plans.possible(ground);
    }

    /**
     * @param seconds how long it may take
     * @param listener told now and then
     * @param cancelled asked now and then; when true, the best plan so far is the answer
     */
    public static Outcome plan(
            PlanQuestion question,
            Manner manner,
            int seconds,
            long seed,
            Consumer<Progress> listener,
            BooleanSupplier cancelled) {
        FixedStays.check(question);
        return new Planner(question).run(manner, seconds, seed, listener, cancelled);
    }

    private Outcome run(Manner manner, int seconds, long seed, Consumer<Progress> listener, BooleanSupplier cancelled) {
        Layout layout = baseline(manner);
        CapacityBound bound = new CapacityBound(new Layout(ground), possible);
        if (manner != Manner.SEARCH) {
            bound.improve(bound.worthwhileSteps(), layout.placed());
            placedBySearch = layout.placed();
            return outcome(layout, bound, bound.bound(), false);
        }
        try (Prover prover = new Prover(possible, (int) seed)) {
            boolean cutShort = search(layout, bound, prover, seconds, seed, listener, cancelled);
            int placedAtMost = Math.min(bound.bound(), prover.bound(layout.placed()));
            return outcome(layout, bound, placedAtMost, cutShort);
        }
    }

    /** The better of the two plain ways, or the one asked for. */
    private Layout baseline(Manner manner) {
        Layout firstCome = new Layout(ground);
        Baselines.firstCome(firstCome);
        if (manner == Manner.FIRST_COME) {
            return firstCome;
        }
        Layout greedy = new Layout(ground);
        Baselines.greedy(greedy);
        boolean greedyIsBetter = manner == Manner.GREEDY || greedy.score().compareTo(firstCome.score()) >= 0;
        return greedyIsBetter ? greedy : firstCome;
    }

    private boolean search(
            Layout layout,
            CapacityBound bound,
            Prover prover,
            int seconds,
            long seed,
            Consumer<Progress> listener,
            BooleanSupplier cancelled) {
        Search search = new Search(layout, possible, seed);
        long budget = Math.min(seconds * WORK_A_SECOND, ground.asks.size() * MOST_WORK_A_REQUEST);
        int worthwhile = bound.worthwhileSteps();
        int boundSteps = 0;
        boolean stopped = false;
        while (!stopped && search.canGoOn() && search.work() < budget) {
            double share = (double) search.work() / budget;
            for (int i = 0; i < STEPS_BETWEEN_LOOKS; i++) {
                search.step(share);
            }
            if (boundSteps < worthwhile) {
                bound.improve(BOUND_STEPS, search.bestScore().placed());
                boundSteps += BOUND_STEPS;
            }
            if (share >= SHARE_BEFORE_PROOF && !prover.isStarted()) {
                prover.start(ground, search.best(), seconds - elapsed(), PROOF_SHARE * seconds);
            }
            int placed = search.bestScore().placed();
            int placedAtMost = Math.min(bound.bound(), prover.bound(placed));
            listener.accept(new Progress(placed, placedAtMost, elapsed(), share, () -> soFar(search.best())));
            stopped = cancelled.getAsBoolean() || elapsed() >= seconds;
        }
        search.returnToBest();
        Polish.of(layout, cancelled);
        bound.improve(worthwhile - boundSteps, layout.placed());
        boolean proofCutShort = prover.await(seconds - elapsed(), layout.placed(), cancelled);
        placedBySearch = layout.placed();
        prover.improve(layout);
        int placedAtMost = Math.min(bound.bound(), prover.bound(layout.placed()));
        SolverProcess solver = prover.process();
        if (stopped || proofCutShort || solver == null || optimal(layout.score(), placedAtMost)) {
            return stopped || proofCutShort;
        }
        boolean refillCutShort = new Refill(layout, possible, solver, (int) seed)
                .run(
                        REFILL_SHARE * seconds,
                        () -> seconds - elapsed(),
                        cancelled,
                        () -> tell(layout, placedAtMost, listener));
        Polish.of(layout, cancelled);
        return refillCutShort;
    }

    private void tell(Layout layout, int placedAtMost, Consumer<Progress> listener) {
        listener.accept(new Progress(layout.placed(), placedAtMost, elapsed(), 1, () -> soFar(layout.snapshot())));
    }

    /** A plan in the middle of the search, whose refusals have not been looked into. */
    private SeasonPlan soFar(Spot[] best) {
        Layout layout = new Layout(ground);
        layout.restore(best);
        List<Refused> refused = ground.asks.stream()
                .filter(ask -> layout.spot(ask.index()) == null)
                .map(ask ->
                        new Refused(question.requests().get(ask.index()).id(), "No place was found for it so far.", ""))
                .toList();
        return new SeasonPlan(Plans.placed(layout), SetPointRuns.spans(layout), refused);
    }

    private Outcome outcome(Layout layout, CapacityBound bound, int placedAtMost, boolean cutShort) {
        Refusals refusals = new Refusals(layout);
        List<Refused> refused = new ArrayList<>();
        for (Ask ask : ground.asks) {
            if (layout.spot(ask.index()) == null) {
                refused.add(refusals.of(question.requests().get(ask.index())));
            }
        }
        SeasonPlan plan = new SeasonPlan(Plans.placed(layout), SetPointRuns.spans(layout), refused);
        List<String> problems = PlanChecker.problems(question, plan);
        if (!problems.isEmpty()) {
            throw new IllegalStateException("the plan breaks a rule and is not shown: " + problems.get(0));
        }
        Score score = layout.score();
        return new Outcome(
                plan,
                score.placed(),
                placedAtMost,
                optimal(score, placedAtMost),
                score.shiftDays(),
                elapsed(),
                placedBySearch,
                bound.bound(),
                cutShort);
    }

    /** Best in number, and nobody who could be placed alone lacks a choice: then no plan is fairer or places more. */
    private boolean optimal(Score score, int placedAtMost) {
        Set<Integer> pairs = new HashSet<>();
        int[] most = new int[ground.ranks];
        for (Ask ask : ground.asks) {
            if (possible[ask.index()] && pairs.add(ask.member())) {
                most[ask.rank()]++;
            }
        }
        return score.placed() == placedAtMost && Arrays.equals(most, score.members());
    }

    private double elapsed() {
        return (System.nanoTime() - started) / 1e9;
    }
}
