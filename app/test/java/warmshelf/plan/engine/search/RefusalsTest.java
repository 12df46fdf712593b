package warmshelf.plan.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.Slot;
import warmshelf.plan.engine.CircuitFeed;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.FixedStay;
import warmshelf.plan.engine.LitShelf;
import warmshelf.plan.engine.NoPlaceReason;
import warmshelf.plan.engine.PlaceChange;
import warmshelf.plan.engine.PlanChecker;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.PlannedMat;
import warmshelf.plan.engine.Refused;
import warmshelf.plan.engine.Request;
import warmshelf.plan.engine.search.Planner.Manner;
import warmshelf.shelf.Circuit;
import warmshelf.shelf.LightAbove;

class RefusalsTest {
    private static final LocalDate MARCH = LocalDate.of(2027, 3, 1);
    private static final Band WARM = new Band(26, 30);
    private static final PlannedMat MAT = new PlannedMat("m1", 1, new Band(18, 32), 500, "c1", List.of(days(40, 42)));

    private final List<PlannedMat> mats = new ArrayList<>(List.of(MAT));
    private final List<FixedStay> fixed = new ArrayList<>();
    private @Nullable List<LitShelf> lit;
    private double amps = 15;

    @Test
    void a_full_mat_is_named_with_its_days_and_the_fewest_days_later_that_fit() {
        fix("m1", new Slot(1, 4), 0, 12);

        assertThat(refused(request(4, 10, Map.of(), null)))
                .isEqualTo(new Refused(
                        "r",
                        new NoPlaceReason.MatsTaken(MARCH.plusDays(2), MARCH.plusDays(15)),
                        new PlaceChange.StartLater(MARCH.plusDays(12), 6)));
    }

    @Test
    void a_bag_is_offered_where_a_tray_finds_no_room_for_weeks() {
        fix("m1", new Slot(1, 2), 0, 60);

        assertThat(refused(request(4, 10, Map.of(), null)).change())
                .isEqualTo(new PlaceChange.Smaller(2, 4, MARCH.plusDays(4)));
    }

    @Test
    void a_cooler_mat_is_offered_with_the_days_that_it_costs() {
        fix("m1", new Slot(1, 1), 0, 60, new Band(20, 24));

        assertThat(refused(request(1, 10, Map.of(24, 13), null)).change())
                .isEqualTo(new PlaceChange.OtherWarmth(24, WARM, MARCH.plusDays(4), 3));
    }

    @Test
    void a_circuit_that_may_not_carry_one_more_mat_is_the_reason_when_it_is_the_only_one() {
        mats.add(new PlannedMat("m2", 1, new Band(18, 32), 500, "c1", List.of()));
        amps = 6;
        fix("m1", new Slot(1, 4), 0, 60);

        assertThat(refused(request(4, 10, Map.of(), null)).reason()).isEqualTo(new NoPlaceReason.CircuitFull());
    }

    @Test
    void seed_that_needs_light_is_told_that_only_dark_mats_have_room_and_what_helps() {
        mats.set(0, new PlannedMat("m1", 1, new Band(18, 32), 500, "c1", LightAbove.NONE, List.of()));
        mats.add(new PlannedMat("m2", 1, new Band(18, 32), 500, "c1", LightAbove.LAMP, List.of()));
        fix("m2", new Slot(1, 4), 0, 60);

        Refused refused = refused(needsLight(request(4, 10, Map.of(), null)));

        assertThat(refused.reason()).isEqualTo(new NoPlaceReason.DarkMatsOnly(WARM));
        assertThat(refused.change()).isEqualTo(new PlaceChange.LightOtherwise());
    }

    @Test
    void a_mat_of_whose_light_nobody_has_said_anything_is_not_taken_for_dark() {
        assertThat(plan(question(needsLight(request(4, 10, Map.of(), null))))
                        .plan()
                        .refused())
                .isEmpty();
    }

    private static Request needsLight(Request request) {
        return new Request(
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
                true,
                request.light());
    }

    @Test
    void a_missing_lit_place_is_the_reason_when_it_is_the_only_one() {
        lit = List.of(new LitShelf("l1", 1));
        fixed.add(new FixedStay("lit", "l1", true, 1, new Slot(1, 1), days(0, 60), null));

        assertThat(refused(request(1, 10, Map.of(), new Request.Light(10, 4))).reason())
                .isEqualTo(new NoPlaceReason.NoLightAfterwards());
    }

    @Test
    void with_a_lit_place_free_it_is_placed_there_after_the_mat() {
        lit = List.of(new LitShelf("l1", 1));
        PlanQuestion question = question(request(1, 10, Map.of(), new Request.Light(10, 4)));

        RatedPlan outcome = plan(question);

        assertThat(outcome.plan().refused()).isEmpty();
        assertThat(PlanChecker.problems(question, outcome.plan())).isEmpty();
        assertThat(outcome.plan().placed().get(0).light()).isNotNull();
    }

    @Test
    void what_would_outlast_the_plan_and_what_is_over_are_told_apart_from_what_is_full() {
        assertThat(refused(request(4, 60, Map.of(), null)).reason())
                .isEqualTo(new NoPlaceReason.OutlastsPlan(LocalDate.of(2027, 4, 29)));
    }

    @Test
    void without_any_change_that_helps_there_is_the_waiting_list() {
        fix("m1", new Slot(1, 4), 0, 60);

        assertThat(refused(request(4, 10, Map.of(), null)).change()).isEqualTo(new PlaceChange.JoinWaitingList());
    }

    private Refused refused(Request request) {
        List<Refused> refused = plan(question(request)).plan().refused();
        assertThat(refused).hasSize(1);
        return refused.get(0);
    }

    private static RatedPlan plan(PlanQuestion question) {
        return Planner.plan(question, Manner.GREEDY, 1, 1, progress -> {}, () -> false);
    }

    private PlanQuestion question(Request request) {
        return new PlanQuestion(
                days(0, 60),
                List.of(new CircuitFeed("c1", new Circuit(amps, 120))),
                mats,
                lit,
                fixed,
                List.of(request));
    }

    private void fix(String mat, Slot slot, int from, int to) {
        fix(mat, slot, from, to, WARM);
    }

    /** Around the days on which the mat is out of service. */
    private void fix(String mat, Slot slot, int from, int to, Band band) {
        add(mat, slot, from, Math.min(to, 40), band);
        if (to > 42) {
            add(mat, slot, 42, to, band);
        }
    }

    private void add(String mat, Slot slot, int from, int to, Band band) {
        fixed.add(new FixedStay("f" + fixed.size(), mat, false, 1, slot, days(from, to), band));
    }

    private static Request request(
            int quarters, int days, Map<Integer, Integer> daysAtC, Request.@Nullable Light light) {
        return new Request(
                "r",
                "a",
                1,
                quarters,
                days,
                new TreeMap<>(daysAtC),
                MARCH.plusDays(2),
                MARCH.plusDays(4),
                MARCH.plusDays(6),
                WARM,
                light);
    }

    private static DayRange days(int from, int to) {
        return new DayRange(MARCH.plusDays(from), MARCH.plusDays(to));
    }
}
