package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.Slot;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.FixedStay;
import warmshelf.plan.engine.PlacedStay;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.SetPointSpan;

class SetPointDaysTest {
    private static final PlanQuestion QUESTION =
            new PlanQuestion(days(1, 30), List.of(), List.of(), List.of(), List.of(), List.of());

    @Test
    void days_on_which_nothing_lies_on_a_mat_lose_their_set_point() {
        SetPointDays days = new SetPointDays(QUESTION, List.of(new SetPointSpan("M1", days(1, 20), 26)));

        days.keepTo(List.of(), List.of(placed(days(5, 9))));

        assertThat(days.spans()).containsExactly(new SetPointSpan("M1", days(5, 9), 26));
    }

    @Test
    void filling_leaves_days_that_are_set_already() {
        SetPointDays days = new SetPointDays(QUESTION, List.of(new SetPointSpan("M1", days(5, 9), 26)));

        days.fill("M1", days(3, 12), 24);

        assertThat(days.spans())
                .containsExactly(
                        new SetPointSpan("M1", days(3, 5), 24),
                        new SetPointSpan("M1", days(5, 9), 26),
                        new SetPointSpan("M1", days(9, 12), 24));
    }

    @Test
    void what_is_fixed_keeps_a_set_point_where_the_plan_has_none_and_a_light_needs_none() {
        SetPointDays days = new SetPointDays(QUESTION, List.of());
        FixedStay onMat = new FixedStay("f1", "M2", false, 1, new Slot(1, 4), days(2, 4), new Band(27, 29));
        FixedStay lit = new FixedStay("f2", "L1", true, 1, new Slot(1, 4), days(2, 4), null);

        days.keepTo(List.of(onMat, lit), List.of());

        assertThat(days.spans()).containsExactly(new SetPointSpan("M2", days(2, 4), 27));
    }

    @Test
    void days_outside_the_plan_are_left_out() {
        SetPointDays days = new SetPointDays(
                QUESTION, List.of(new SetPointSpan("M1", new DayRange(march(28), LocalDate.of(2027, 4, 5)), 26)));

        days.keepTo(List.of(), List.of(placed(days(27, 30))));

        assertThat(days.spans()).containsExactly(new SetPointSpan("M1", days(28, 30), 26));
        assertThat(days.on("M1", march(27))).isNull();
    }

    @Test
    void what_is_fixed_stands_to_the_tenth_and_days_beside_it_at_that_degree_follow() {
        SetPointDays days = new SetPointDays(QUESTION, List.of(new SetPointSpan("M1", days(1, 20), 27)));

        days.standAs(List.of(new SetPointSpan("M1", days(5, 9), 27.2)), List.of(fixed(days(5, 9), 27)));

        assertThat(days.spans()).containsExactly(new SetPointSpan("M1", days(1, 20), 27.2));
    }

    @Test
    void a_mat_that_stands_at_another_degree_changes_nothing_of_the_plan() {
        SetPointDays days = new SetPointDays(QUESTION, List.of(new SetPointSpan("M1", days(1, 20), 27)));

        days.standAs(List.of(new SetPointSpan("M1", days(5, 9), 27.8)), List.of());

        assertThat(days.spans()).containsExactly(new SetPointSpan("M1", days(1, 20), 27));
    }

    @Test
    void days_at_another_degree_or_after_a_gap_do_not_follow() {
        SetPointDays days = new SetPointDays(
                QUESTION,
                List.of(
                        new SetPointSpan("M1", days(1, 5), 26),
                        new SetPointSpan("M1", days(5, 9), 27),
                        new SetPointSpan("M1", days(10, 12), 27)));

        days.standAs(List.of(new SetPointSpan("M1", days(6, 7), 26.7)), List.of());

        assertThat(days.spans())
                .containsExactly(
                        new SetPointSpan("M1", days(1, 5), 26),
                        new SetPointSpan("M1", days(5, 9), 26.7),
                        new SetPointSpan("M1", days(10, 12), 27));
    }

    @Test
    void a_tenth_that_somebody_asked_for_in_the_plan_gives_way_only_to_what_is_fixed() {
        SetPointDays days = new SetPointDays(QUESTION, List.of(new SetPointSpan("M1", days(1, 9), 27.2)));

        days.standAs(List.of(new SetPointSpan("M1", days(3, 7), 26.7)), List.of(fixed(days(5, 7), 27)));

        assertThat(days.spans())
                .containsExactly(
                        new SetPointSpan("M1", days(1, 5), 27.2),
                        new SetPointSpan("M1", days(5, 7), 26.7),
                        new SetPointSpan("M1", days(7, 9), 27.2));
    }

    private static FixedStay fixed(DayRange range, int celsius) {
        return new FixedStay("f1", "M1", false, 1, new Slot(1, 4), range, new Band(celsius, celsius));
    }

    private static PlacedStay placed(DayRange range) {
        return new PlacedStay("one", "M1", 1, new Slot(1, 4), range, null);
    }

    private static DayRange days(int from, int to) {
        return new DayRange(march(from), march(to));
    }

    private static LocalDate march(int day) {
        return LocalDate.of(2027, 3, day);
    }
}
