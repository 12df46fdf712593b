package warmshelf.allocation.plan.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import warmshelf.allocation.Band;
import warmshelf.allocation.Slot;
import warmshelf.allocation.plan.DayRange;
import warmshelf.allocation.plan.FixedStay;
import warmshelf.allocation.plan.Mat;
import warmshelf.allocation.plan.PlanQuestion;
import warmshelf.allocation.plan.Request;
import warmshelf.allocation.plan.search.Planner.Manner;

/**
 * Bin packing in the form of a season: a quarter of a place in time is a bin, a bag that lies for as many days as its item is
 * large is the item, and all may begin at any time. The example is the worst case of first fit decreasing, after Johnson,
 * Demers, Ullman, Garey and Graham (1974), 'Worst-case performance bounds for simple one-dimensional packing algorithms',
 * with bins of 100 instead of 1: 6 items of 51, 6 of 27, 6 of 26 and 12 of 23 fill 9 bins without a gap, since
 * 51 + 26 + 23 = 100 and 27 + 27 + 23 + 23 = 100; first fit decreasing needs 11. That 9 suffice is arithmetic.
 */
class BinPackingTest {
    private static final LocalDate START = LocalDate.of(2027, 2, 1);
    private static final int BIN = 100;

    @Test
    void bins_that_can_be_filled_without_a_gap_are_filled_and_one_bin_less_is_known_not_to_do() {
        Outcome enough = Planner.plan(question(9), Manner.SEARCH, 20, 1, progress -> {}, () -> false);
        Outcome oneLess = Planner.plan(question(8), Manner.SEARCH, 5, 1, progress -> {}, () -> false);

        assertThat(enough.placed()).isGreaterThanOrEqualTo(29);
        assertThat(enough.placedAtMost()).isEqualTo(30);
        // of 900 days of items 800 fit, so something of 100 days must stay out: the two largest, at least
        assertThat(oneLess.placedAtMost()).isEqualTo(28);
        assertThat(oneLess.placed()).isLessThanOrEqualTo(28);
    }

    /** Each place is three quarters taken for good, so that one quarter of it is a bin. */
    private static PlanQuestion question(int bins) {
        List<Mat> mats = List.of(new Mat("m", bins, new Band(20, 30), 0, null, List.of()));
        DayRange days = new DayRange(START, START.plusDays(BIN));
        List<FixedStay> fixed = new ArrayList<>();
        for (int bin = 1; bin <= bins; bin++) {
            fixed.add(new FixedStay("half" + bin, "m", false, bin, new Slot(1, 2), days, new Band(20, 30)));
            fixed.add(new FixedStay("bag" + bin, "m", false, bin, new Slot(3, 1), days, new Band(20, 30)));
        }
        List<Request> items = new ArrayList<>();
        int[][] sizes = {{51, 6}, {27, 6}, {26, 6}, {23, 12}};
        for (int[] size : sizes) {
            for (int i = 0; i < size[1]; i++) {
                items.add(new Request(
                        "r" + items.size(),
                        "a" + items.size(),
                        1,
                        1,
                        size[0],
                        new TreeMap<>(),
                        START,
                        START,
                        START.plusDays(BIN - 1),
                        new Band(24, 26),
                        null));
            }
        }
        return new PlanQuestion(days, List.of(), mats, null, fixed, items);
    }
}
