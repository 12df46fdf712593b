package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Slot;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.FixedStay;
import warmshelf.plan.engine.LitShelf;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.PlacedStay.LitStay;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.Request;

class LightFitTest {
    private static final DayRange ON_MAT = new DayRange(march(10), march(24));
    private static final Request.Light HALF = new Request.Light(20, 2);
    private static final DayRange AFTER = new DayRange(march(24), LocalDate.of(2027, 4, 13));

    @Test
    void the_first_free_half_is_found_right_after_the_mat() {
        assertThat(fit(List.of(fixed(1, new Slot(1, 2)))).after("M1", ON_MAT, HALF))
                .contains(new LitStay("L1", 1, new Slot(3, 2), AFTER));
    }

    @Test
    void what_others_of_the_plan_take_is_not_free() {
        LitStay other = new LitStay("L1", 1, new Slot(1, 4), AFTER);
        PlacedStay placed = new PlacedStay("other", "M1", 1, new Slot(1, 4), ON_MAT, other);

        assertThat(new LightFit(question(List.of()), List.of(placed)).after("M1", ON_MAT, HALF))
                .contains(new LitStay("L1", 2, new Slot(1, 2), AFTER));
    }

    @Test
    void with_every_place_taken_for_a_day_there_is_none() {
        FixedStay first = fixed(1, new Slot(1, 4));
        FixedStay second = fixed(2, new Slot(1, 4));

        assertThat(fit(List.of(first, second)).after("M1", ON_MAT, HALF)).isEmpty();
    }

    @Test
    void it_need_not_reach_beyond_the_days_of_the_plan() {
        assertThat(fit(List.of())
                        .after("M1", ON_MAT, new Request.Light(90, 2))
                        .orElseThrow()
                        .days())
                .isEqualTo(new DayRange(march(24), LocalDate.of(2027, 5, 1)));
    }

    private static LightFit fit(List<FixedStay> fixed) {
        return new LightFit(question(fixed), List.of());
    }

    private static PlanQuestion question(List<FixedStay> fixed) {
        return new PlanQuestion(
                new DayRange(march(1), LocalDate.of(2027, 5, 1)),
                List.of(),
                List.of(),
                List.of(new LitShelf("L1", 2)),
                fixed,
                List.of());
    }

    private static FixedStay fixed(int place, Slot slot) {
        return new FixedStay("f" + place, "L1", true, place, slot, new DayRange(march(30), march(31)), null);
    }

    private static LocalDate march(int day) {
        return LocalDate.of(2027, 3, day);
    }
}
