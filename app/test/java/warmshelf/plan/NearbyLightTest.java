package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.Slot;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.LitShelf;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.PlacedStay.LitStay;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.PlannedMat;
import warmshelf.plan.engine.SeasonPlan;

class NearbyLightTest {
    private static final String BARN_SHELF = "Barn · East · shelf 1";
    private static final String CELLAR_SHELF = "Cellar · North · shelf 2";
    private static final Slot WHOLE = new Slot(1, 4);
    private static final DayRange WARM = new DayRange(march(1), march(10));
    private static final DayRange LIGHT = new DayRange(march(10), march(30));

    private static final PlanQuestion QUESTION = new PlanQuestion(
            new DayRange(march(1), march(60)),
            List.of(),
            List.of(mat("B1", "Barn"), mat("C1", "Cellar")),
            List.of(new LitShelf(BARN_SHELF, 2), new LitShelf(CELLAR_SHELF, 1)),
            List.of(),
            List.of());

    @Test
    void what_comes_off_a_mat_goes_under_a_light_of_the_same_site_while_one_is_free() {
        SeasonPlan plan = plan(stay("one", "C1", BARN_SHELF, 1), stay("two", "C1", BARN_SHELF, 2));

        assertThat(new NearbyLight(QUESTION).arranged(plan).placed())
                .containsExactly(stay("one", "C1", CELLAR_SHELF, 1), stay("two", "C1", BARN_SHELF, 2));
    }

    @Test
    void what_is_near_already_and_what_needs_no_light_stays_as_it_is() {
        PlacedStay without = new PlacedStay("two", "C1", 1, WHOLE, WARM, null);
        SeasonPlan plan = plan(stay("one", "B1", BARN_SHELF, 2), without);

        assertThat(new NearbyLight(QUESTION).arranged(plan)).isEqualTo(plan);
    }

    private static SeasonPlan plan(PlacedStay... placed) {
        return new SeasonPlan(List.of(placed), List.of(), List.of());
    }

    private static PlacedStay stay(String request, String mat, String shelf, int place) {
        return new PlacedStay(request, mat, 1, WHOLE, WARM, new LitStay(shelf, place, WHOLE, LIGHT));
    }

    private static PlannedMat mat(String id, String site) {
        return new PlannedMat(id, 1, new Band(20, 30), 45, site, List.of());
    }

    private static LocalDate march(int day) {
        return LocalDate.of(2027, 3, 1).plusDays(day - 1L);
    }
}
