package warmshelf.plan.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.Slot;
import warmshelf.shelf.Circuit;
import warmshelf.shelf.LightAbove;
import warmshelf.words.Units;

/** Each rule is broken once, alone, in a plan that otherwise keeps them all. */
class PlanCheckerTest {
    private static final LocalDate MARCH = LocalDate.of(2027, 3, 1);
    private static final PlannedMat M1 = new PlannedMat("m1", 2, new Band(20, 32), 900, "c1", List.of(days(20, 30)));
    private static final PlannedMat M2 = new PlannedMat("m2", 1, new Band(20, 32), 600, "c1", List.of());
    private static final FixedStay FIXED =
            new FixedStay("f1", "m1", false, 2, new Slot(1, 2), days(0, 5), new Band(24, 30));

    private List<PlannedMat> mats = List.of(M1, M2);
    private final List<Request> requests = new ArrayList<>(List.of(request("r1", 4, null), request("r2", 1, null)));
    private @Nullable List<LitShelf> lit;
    private final List<PlacedStay> placed = new ArrayList<>(
            List.of(stay("r1", "m1", 1, new Slot(1, 4), 2, 12), stay("r2", "m1", 2, new Slot(3, 1), 3, 13)));
    private final List<SetPointSpan> setPoints = new ArrayList<>(List.of(new SetPointSpan("m1", days(0, 20), 26)));
    private final List<Refused> refused = new ArrayList<>();

    @Test
    void a_plan_that_keeps_every_rule_has_no_problem() {
        assertThat(problems()).isEmpty();
    }

    @Test
    void a_quarter_holds_one_thing_a_day() {
        placed.set(1, stay("r2", "m1", 1, new Slot(3, 1), 8, 18));

        assertThat(problems()).singleElement().asString().contains("'r1'", "'r2'", "quarter 3", "2027-03-09");
    }

    @Test
    void what_is_fixed_keeps_its_quarters() {
        placed.set(1, stay("r2", "m1", 2, new Slot(2, 1), 3, 13));

        assertThat(problems()).singleElement().asString().contains("'f1'", "'r2'", "place 2");
    }

    @Test
    void what_is_fixed_keeps_its_warmth() {
        requests.clear();
        placed.clear();
        setPoints.set(0, new SetPointSpan("m1", days(0, 20), 31));

        assertThat(problems()).singleElement().asString().contains("'f1'", "31 °C");
    }

    @Test
    void a_stay_takes_as_many_quarters_as_were_asked_for() {
        placed.set(1, stay("r2", "m1", 2, new Slot(3, 2), 3, 13));

        assertThat(problems()).singleElement().asString().contains("takes 2 quarters and asked for 1");
    }

    @Test
    void a_place_must_exist() {
        placed.set(1, stay("r2", "m1", 3, new Slot(3, 1), 3, 13));

        assertThat(problems()).singleElement().asString().contains("place 3");
    }

    @Test
    void a_stay_begins_within_its_window() {
        placed.set(1, stay("r2", "m1", 2, new Slot(3, 1), 9, 19));

        assertThat(problems()).singleElement().asString().contains("2027-03-10", "window");
    }

    @Test
    void a_stay_lasts_as_long_as_it_needs() {
        placed.set(1, stay("r2", "m1", 2, new Slot(3, 1), 3, 12));

        assertThat(problems()).singleElement().asString().contains("9 days");
    }

    @Test
    void a_stay_lasts_as_long_as_each_set_point_under_it_asks() {
        requests.set(1, request("r2", 1, 24, 14));
        placed.set(1, stay("r2", "m1", 2, new Slot(3, 1), 3, 17));
        setPoints.set(0, new SetPointSpan("m1", days(0, 20), 24));
        assertThat(problems()).isEmpty();

        setPoints.set(0, new SetPointSpan("m1", days(0, 16), 24));
        setPoints.add(new SetPointSpan("m1", days(16, 20), 25));
        assertThat(problems()).singleElement().asString().contains("14 days", "25 °C");
    }

    @Test
    void the_set_point_suits_everything_every_day() {
        setPoints.set(0, new SetPointSpan("m1", days(0, 12), 26));
        setPoints.add(new SetPointSpan("m1", days(12, 20), 23));

        assertThat(problems()).singleElement().asString().contains("'r2'", "23 °C", "2027-03-13");
    }

    @Test
    void a_warm_mat_has_a_set_point() {
        setPoints.set(0, new SetPointSpan("m1", days(0, 12), 26));

        assertThat(problems()).singleElement().asString().contains("no set-point");
    }

    @Test
    void a_mat_has_one_set_point_a_day() {
        setPoints.add(new SetPointSpan("m1", days(19, 20), 26));

        assertThat(problems()).singleElement().asString().contains("two set-points");
    }

    @Test
    void a_set_point_lies_within_the_thermostat() {
        setPoints.add(new SetPointSpan("m2", days(0, 3), 33));

        assertThat(problems()).singleElement().asString().contains("'m2'", "33 °C");
    }

    @Test
    void nothing_lies_on_a_mat_out_of_service() {
        mats = List.of(new PlannedMat("m1", 2, new Band(20, 32), 900, "c1", List.of(days(12, 14))), M2);

        assertThat(problems()).singleElement().asString().contains("'r2'", "out of service");
    }

    @Test
    void a_circuit_carries_at_most_80_percent_of_its_rating() {
        // 15 A at 120 V is 1,800 W, of which 1,440 may be planned for loads that last; the mats take 900 and 600
        placed.set(1, stay("r2", "m2", 1, new Slot(3, 1), 3, 13));
        setPoints.add(new SetPointSpan("m2", days(0, 20), 26));
        assertThat(problems())
                .hasSize(9)
                .allSatisfy(problem -> assertThat(problem).contains("1500 watts"));

        mats = List.of(M1, new PlannedMat("m2", 1, new Band(20, 32), 540, "c1", List.of()));
        assertThat(problems()).isEmpty();
    }

    @Test
    void every_request_is_answered_once() {
        refused.add(new Refused("r2", new NoPlaceReason.CircuitFull(), new PlaceChange.NothingProposed()));
        assertThat(problems()).singleElement().asString().contains("'r2'", "twice");

        refused.clear();
        placed.remove(1);
        assertThat(problems()).singleElement().asString().contains("'r2'", "neither");
    }

    @Test
    void a_request_that_is_not_in_the_file_is_noticed() {
        refused.add(new Refused("r9", new NoPlaceReason.CircuitFull(), new PlaceChange.NothingProposed()));

        assertThat(problems()).singleElement().asString().contains("'r9'");
    }

    @Test
    void a_stay_lies_within_the_days_of_the_plan() {
        requests.set(1, request("r2", 1, 26, 40));
        placed.set(1, stay("r2", "m2", 1, new Slot(3, 1), 3, 43));
        setPoints.add(new SetPointSpan("m2", days(0, 40), 26));
        mats = List.of(M1, new PlannedMat("m2", 1, new Band(20, 32), 5, null, List.of()));

        assertThat(problems()).singleElement().asString().contains("beyond the days");
    }

    @Test
    void what_asks_for_light_has_a_lit_place_when_it_comes_off_the_mat() {
        lit = List.of(new LitShelf("l1", 1));
        requests.set(1, request("r2", 1, new Request.Light(5, 4)));
        assertThat(problems()).singleElement().asString().contains("no lit place");

        light("l1", 1, new Slot(1, 4), 13, 18);
        assertThat(problems()).isEmpty();

        light("l1", 1, new Slot(1, 4), 13, 17);
        assertThat(problems()).singleElement().asString().contains("not what it asked for");

        light("l1", 2, new Slot(1, 4), 13, 18);
        assertThat(problems()).singleElement().asString().contains("does not exist");
    }

    @Test
    void seed_that_needs_light_does_not_lie_in_the_dark() {
        Request dark = requests.get(1);
        requests.set(
                1,
                new Request(
                        dark.id(),
                        dark.member(),
                        dark.choice(),
                        dark.quarters(),
                        dark.days(),
                        dark.daysAtC(),
                        dark.earliest(),
                        dark.ideal(),
                        dark.latest(),
                        dark.band(),
                        true,
                        dark.light()));
        assertThat(problems()).as("nobody has said that the mat is dark").isEmpty();

        for (LightAbove light : LightAbove.values()) {
            mats = List.of(new PlannedMat("m1", 2, new Band(20, 32), 900, "c1", light, List.of()), M2);
            if (light == LightAbove.NONE) {
                assertThat(problems()).singleElement().asString().contains("needs light to come up", "'m1' has none");
            } else {
                assertThat(problems()).isEmpty();
            }
        }
    }

    private void light(String shelf, int place, Slot slot, int from, int to) {
        PlacedStay stay = placed.get(1);
        placed.set(
                1,
                new PlacedStay(
                        stay.request(),
                        stay.mat(),
                        stay.place(),
                        stay.slot(),
                        stay.days(),
                        new PlacedStay.LitStay(shelf, place, slot, days(from, to))));
    }

    private List<String> problems() {
        PlanQuestion question = new PlanQuestion(
                days(0, 40), List.of(new CircuitFeed("c1", new Circuit(15, 120))), mats, lit, List.of(FIXED), requests);
        return PlanChecker.problems(question, new SeasonPlan(placed, setPoints, refused)).stream()
                .map(problem -> problem.words(PlanNames.IN_FILE, Units.METRIC))
                .toList();
    }

    private static Request request(String id, int quarters, Request.@Nullable Light light) {
        return new Request(
                id,
                "a",
                1,
                quarters,
                10,
                new TreeMap<>(),
                MARCH,
                MARCH.plusDays(2),
                MARCH.plusDays(8),
                new Band(24, 30),
                light);
    }

    private static Request request(String id, int quarters, int celsius, int days) {
        TreeMap<Integer, Integer> daysAtC = new TreeMap<>();
        daysAtC.put(celsius, days);
        return new Request(
                id, "a", 1, quarters, 10, daysAtC, MARCH, MARCH.plusDays(2), MARCH.plusDays(8), new Band(24, 30), null);
    }

    private static PlacedStay stay(String request, String mat, int place, Slot slot, int from, int to) {
        return new PlacedStay(request, mat, place, slot, days(from, to), null);
    }

    private static DayRange days(int from, int to) {
        return new DayRange(MARCH.plusDays(from), MARCH.plusDays(to));
    }
}
