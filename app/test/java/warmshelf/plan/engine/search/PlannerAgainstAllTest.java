package warmshelf.plan.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.Slot;
import warmshelf.plan.engine.CircuitFeed;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.FixedStay;
import warmshelf.plan.engine.PlanChecker;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.PlannedMat;
import warmshelf.plan.engine.Request;
import warmshelf.plan.engine.search.Planner.Manner;
import warmshelf.shelf.Circuit;
import warmshelf.shelf.LightAbove;

/** The search beside a plain try of everything, which shares none of its code, on small random questions. */
class PlannerAgainstAllTest {
    private static final List<LightAbove> LIGHTS = List.of(LightAbove.values());

    private static final LocalDate START = LocalDate.of(2027, 3, 1);
    private static final int DAYS = 12;
    private static final int WITH_SOLVER_EACH = 8;

    @Test
    void a_small_question_gets_the_fairest_and_fullest_plan_there_is_and_a_bound_that_holds() {
        assertAsGoodAsAny(new Random(20270301), (question, random) -> question);
    }

    @Test
    void seed_that_needs_light_is_laid_on_mats_that_are_not_dark_and_as_well_as_any_plan_could() {
        assertAsGoodAsAny(new Random(20270317), PlannerAgainstAllTest::withDarkMats);
    }

    private static void assertAsGoodAsAny(Random random, BiFunction<PlanQuestion, Random, PlanQuestion> as) {
        int refusals = 0;
        for (int run = 0; run < 25; run++) {
            PlanQuestion question = as.apply(question(random), random);

            RatedPlan found = plan(question, run);
            EverythingTried tried = new EverythingTried(question);

            assertThat(PlanChecker.problems(question, found.plan())).isEmpty();
            assertThat(found.placedAtMost())
                    .as("bound of run %d: %s", run, question)
                    .isGreaterThanOrEqualTo(tried.most());
            assertThat(tried.fairness(found.plan()))
                    .as("run %d: %s", run, question)
                    .isEqualTo(tried.fairest());
            if (found.optimal()) {
                assertThat(found.placed()).isEqualTo(tried.most());
            }
            refusals += found.plan().refused().size();
        }
        assertThat(refusals)
                .as("questions must be hard enough to refuse something")
                .isGreaterThan(5);
    }

    /** The solver's process takes seconds to start: it is asked now and then, and where the search cannot prove what it found. */
    private static RatedPlan plan(PlanQuestion question, int run) {
        RatedPlan alone = Steadily.withoutSolver(question, 0.2);
        return alone.optimal() && run % WITH_SOLVER_EACH != 0 ? alone : Steadily.plan(question, Manner.SEARCH, 1);
    }

    /** About half of the mats are dark, and half of the seed needs light. */
    private static PlanQuestion withDarkMats(PlanQuestion question, Random random) {
        List<PlannedMat> mats = question.mats().stream()
                .map(mat -> new PlannedMat(
                        mat.id(),
                        mat.places(),
                        mat.thermostat(),
                        mat.watts(),
                        mat.circuit(),
                        random.nextBoolean() ? LightAbove.NONE : LIGHTS.get(random.nextInt(LIGHTS.size())),
                        mat.out()))
                .toList();
        List<Request> requests = question.requests().stream()
                .map(request -> new Request(
                        request.id(),
                        request.member(),
                        request.choice(),
                        request.quarters(),
                        request.days(),
                        request.daysAtC(),
                        request.earliest(),
                        request.ideal(),
                        request.latest(),
                        request.band(),
                        random.nextBoolean(),
                        request.light()))
                .toList();
        return new PlanQuestion(
                question.days(), question.circuits(), mats, question.litShelves(), question.fixed(), requests);
    }

    private static PlanQuestion question(Random random) {
        List<PlannedMat> mats = new ArrayList<>();
        for (int mat = 0; mat < 1 + random.nextInt(4) / 3; mat++) {
            int low = 20 + random.nextInt(3);
            List<DayRange> out = random.nextInt(3) == 0 ? List.of(days(5, 6 + random.nextInt(3))) : List.of();
            mats.add(new PlannedMat("m" + mat, 1, new Band(low, low + 4 + random.nextInt(4)), 60, "c", out));
        }
        List<FixedStay> fixed = new ArrayList<>();
        if (random.nextBoolean()) {
            PlannedMat mat = mats.get(0);
            fixed.add(new FixedStay(
                    "f", mat.id(), false, 1, new Slot(3, 2), days(0, 1 + random.nextInt(4)), mat.thermostat()));
        }
        List<Request> requests = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            requests.add(request(i, random));
        }
        double amps = random.nextBoolean() ? 10 : 0.8;
        return new PlanQuestion(
                days(0, DAYS), List.of(new CircuitFeed("c", new Circuit(amps, 120))), mats, null, fixed, requests);
    }

    private static Request request(int number, Random random) {
        int low = 20 + random.nextInt(6);
        Band band = new Band(low, low + random.nextInt(4));
        LocalDate earliest = START.plusDays(random.nextInt(5));
        int slack = random.nextInt(2);
        TreeMap<Integer, Integer> daysAtC = new TreeMap<>();
        if (random.nextBoolean()) {
            daysAtC.put(low, 6);
        }
        return new Request(
                "r" + number,
                "member" + random.nextInt(3),
                1 + random.nextInt(2),
                1 << random.nextInt(3),
                3 + random.nextInt(3),
                daysAtC,
                earliest,
                earliest.plusDays(random.nextInt(slack + 1)),
                earliest.plusDays(slack),
                band,
                null);
    }

    private static DayRange days(int from, int to) {
        return new DayRange(START.plusDays(from), START.plusDays(to));
    }
}
