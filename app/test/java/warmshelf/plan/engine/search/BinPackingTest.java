package warmshelf.plan.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.Slot;
import warmshelf.plan.engine.DayRange;
import warmshelf.plan.engine.FixedStay;
import warmshelf.plan.engine.PlanQuestion;
import warmshelf.plan.engine.PlannedMat;
import warmshelf.plan.engine.Request;
import warmshelf.plan.engine.search.Planner.Manner;

/**
 * Bin packing in the form of a season: a quarter of a place in time is a bin, a bag that lies for as many days as its item is
 * large is the item, and all may begin at any time. The example is the worst case of first fit decreasing, after Johnson,
 * Demers, Ullman, Garey and Graham (1974), 'Worst-case performance bounds for simple one-dimensional packing algorithms',
 * with bins of 100 instead of 1: 6 items of 51, 6 of 27, 6 of 26 and 12 of 23 fill 9 bins without a gap, since
 * 51 + 26 + 23 = 100 and 27 + 27 + 23 + 23 = 100; first fit decreasing needs 11. That 9 suffice is arithmetic.
 *
 * <p>The published instance is u120_00 of the OR-Library (J. E. Beasley, file binpack1.txt; the set is Falkenauer's, 1996, 'A
 * hybrid grouping genetic algorithm for bin packing'): 120 items, bins of 150, 48 bins in the best known solution, which is the
 * best, since the items come to 7,078 and 47 bins hold 7,050.
 */
class BinPackingTest {
    private static final LocalDate START = LocalDate.of(2027, 2, 1);
    private static final int[] U120_00 = {
        42, 69, 67, 57, 93, 90, 38, 36, 45, 42, 33, 79, 27, 57, 44, 84, 86, 92, 46, 38,
        85, 33, 82, 73, 49, 70, 59, 23, 57, 72, 74, 69, 33, 42, 28, 46, 30, 64, 29, 74,
        41, 49, 55, 98, 80, 32, 25, 38, 82, 30, 35, 39, 57, 84, 62, 50, 55, 27, 30, 36,
        20, 78, 47, 26, 45, 41, 58, 98, 91, 96, 73, 84, 37, 93, 91, 43, 73, 85, 81, 79,
        71, 80, 76, 83, 41, 78, 70, 23, 42, 87, 43, 84, 60, 55, 49, 78, 73, 62, 36, 44,
        94, 69, 32, 96, 70, 84, 58, 78, 25, 80, 58, 66, 83, 24, 98, 60, 42, 43, 43, 39
    };

    @Test
    void bins_that_can_be_filled_without_a_gap_are_filled_and_one_bin_less_is_known_not_to_do() {
        RatedPlan enough = Steadily.plan(question(9, 100, worstCase()), Manner.SEARCH, 5);
        RatedPlan oneLess = Steadily.plan(question(8, 100, worstCase()), Manner.SEARCH, 1);

        assertThat(enough.placed()).isGreaterThanOrEqualTo(29);
        assertThat(enough.placedAtMost()).isEqualTo(30);
        // of 900 days of items 800 fit, so something of 100 days must stay out: the two largest, at least
        assertThat(oneLess.placedAtMost()).isEqualTo(28);
        assertThat(oneLess.placed()).isLessThanOrEqualTo(28);
    }

    @Test
    void of_a_published_instance_nearly_all_goes_into_the_published_number_of_bins_and_never_all_into_one_less() {
        RatedPlan best = Steadily.plan(question(48, 150, U120_00), Manner.SEARCH, 6);
        RatedPlan oneLess = Steadily.plan(question(47, 150, U120_00), Manner.SEARCH, 1);

        assertThat(best.placedAtMost()).isEqualTo(120);
        assertThat(best.placed()).isGreaterThanOrEqualTo(117);
        assertThat(oneLess.placedAtMost()).isEqualTo(119);
        assertThat(oneLess.placed()).isLessThanOrEqualTo(119);
    }

    private static int[] worstCase() {
        int[][] sizes = {{51, 6}, {27, 6}, {26, 6}, {23, 12}};
        return Arrays.stream(sizes)
                .flatMapToInt(size -> IntStream.generate(() -> size[0]).limit(size[1]))
                .toArray();
    }

    /** Each place is three quarters taken for good, so that one quarter of it is a bin. */
    private static PlanQuestion question(int bins, int bin, int[] sizes) {
        List<PlannedMat> mats = List.of(new PlannedMat("m", bins, new Band(20, 30), 0, null, List.of()));
        DayRange days = new DayRange(START, START.plusDays(bin));
        List<FixedStay> fixed = new ArrayList<>();
        for (int i = 1; i <= bins; i++) {
            fixed.add(new FixedStay("half" + i, "m", false, i, new Slot(1, 2), days, new Band(20, 30)));
            fixed.add(new FixedStay("bag" + i, "m", false, i, new Slot(3, 1), days, new Band(20, 30)));
        }
        List<Request> items = new ArrayList<>();
        for (int size : sizes) {
            String id = "r" + items.size();
            LocalDate latest = START.plusDays(bin - 1);
            items.add(new Request(id, id, 1, 1, size, new TreeMap<>(), START, START, latest, new Band(24, 26), null));
        }
        return new PlanQuestion(days, List.of(), mats, null, fixed, items);
    }
}
