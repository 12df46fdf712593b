package warmshelf.plan.engine.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.FixedStays;
import warmshelf.plan.engine.PlanChecker;
import warmshelf.plan.engine.PlanProblem;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.Refused;
import warmshelf.plan.engine.SeasonPlan;
import warmshelf.plan.engine.solver.SolverProcess;

/**
 * Plans a season. The same question, starting number and seconds give the same plan on every machine: seconds are turned into an amount
 * of work, and the clock only stops what a slow or busy machine cannot finish in that time ({@link RatedPlan#cutShort}).
 */
public final class Planner {
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

    /** By request: enough for the few that lie on one mat. */
    private static final double MOMENT_SECONDS = 0.005;

    private final PlanQuestion question;
    private final IndexedQuestion ground;
    private final boolean[] possible;
    private final long started = System.nanoTime();
    private int placedBySearch;

    private Planner(PlanQuestion question) {
        this.question = question;
        ground = new IndexedQuestion(question);
        possible = Plans.possible(ground);
    }

    /**
     * Makes the best plan it finds.
     *
     * @param seconds how long it may take
     * @param listener told now and then
     * @param cancelled asked now and then; when true, the best plan so far is the answer
     */
    public static RatedPlan plan(
            PlanQuestion question,
            Manner manner,
            int seconds,
            long startingNumber,
            Consumer<Progress> listener,
            BooleanSupplier cancelled) {
        return plan(question, manner, Effort.of(seconds), startingNumber, listener, cancelled, SolverProcess::start);
    }

    /**
     * The best plan that a moment's work finds by the search alone, for somebody who waits: only to start the solver's process takes
     * longer.
     *
     * @param clockSeconds after which what was found so far is the answer
     */
    public static RatedPlan quickly(PlanQuestion question, double clockSeconds) {
        Effort effort = new Effort(MOMENT_SECONDS * question.requests().size(), clockSeconds);
        return plan(question, Manner.SEARCH, effort, 1, progress -> {}, () -> false, () -> null);
    }

    /** What no plan can exceed, from prices on room alone: soon told, for whoever has places already and asks for no plan. */
    public static int placedAtMost(PlanQuestion question) {
        FixedStays.check(question);
        Planner planner = new Planner(question);
        CapacityBound bound = new CapacityBound(new Layout(planner.ground), planner.possible);
        bound.improve(bound.worthwhileSteps(), planner.baseline(Manner.GREEDY).placed());
        return bound.bound();
    }

    /** Makes the best plan it finds with an effort and a solver of one's own; null where there is none. */
    static RatedPlan plan(
            PlanQuestion question,
            Manner manner,
            Effort effort,
            long startingNumber,
            Consumer<Progress> listener,
            BooleanSupplier cancelled,
            Supplier<@Nullable SolverProcess> solver) {
        FixedStays.check(question);
        return new Planner(question).run(manner, effort, startingNumber, listener, cancelled, solver);
    }

    private RatedPlan run(
            Manner manner,
            Effort effort,
            long startingNumber,
            Consumer<Progress> listener,
            BooleanSupplier cancelled,
            Supplier<@Nullable SolverProcess> solver) {
        Layout layout = baseline(manner);
        CapacityBound bound = new CapacityBound(new Layout(ground), possible);
        if (manner != Manner.SEARCH) {
            bound.improve(bound.worthwhileSteps(), layout.placed());
            placedBySearch = layout.placed();
            return outcome(layout, bound, bound.bound(), false);
        }
        try (Prover prover = new Prover(possible, (int) startingNumber, solver)) {
            Improvement improvement = new Improvement(
                    layout, possible, bound, prover, effort, startingNumber, this::elapsed, listener, cancelled);
            boolean cutShort = improvement.run(score -> optimal(score, improvement.placedAtMost()));
            placedBySearch = improvement.placedBySearch();
            return outcome(layout, bound, improvement.placedAtMost(), cutShort);
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

    private RatedPlan outcome(Layout layout, CapacityBound bound, int placedAtMost, boolean cutShort) {
        Refusals refusals = new Refusals(layout);
        List<Refused> refused = new ArrayList<>();
        for (IndexedRequest ask : ground.asks) {
            if (layout.spot(ask.index()) == null) {
                refused.add(refusals.of(question.requests().get(ask.index())));
            }
        }
        SeasonPlan plan = new SeasonPlan(Plans.placed(layout), SetPointRuns.spans(layout), refused);
        List<PlanProblem> problems = PlanChecker.problems(question, plan);
        if (!problems.isEmpty()) {
            throw new IllegalStateException("the plan breaks a rule and is not shown: " + problems.get(0));
        }
        Score score = layout.score();
        return new RatedPlan(
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
        for (IndexedRequest ask : ground.asks) {
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
