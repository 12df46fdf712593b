package warmshelf.plan.engine.search;

import java.util.ArrayList;
import java.util.List;
import warmshelf.plan.engine.SetPointSpan;

/**
 * Which set-point each mat gets on the days on which something lies on it. A set-point is kept for as long as it suits all
 * that comes; that makes the fewest turns, as with the fewest points that stab a row of intervals.
 */
final class SetPointRuns {
    private SetPointRuns() {}

    static long turns(Layout layout) {
        long turns = 0;
        for (int mat = 0; mat < layout.ground.mats; mat++) {
            turns += turns(layout, mat);
        }
        return turns;
    }

    private static int turns(Layout layout, int mat) {
        long shared = -1;
        int turns = 0;
        for (int day = 0; day < layout.ground.days; day++) {
            if (layout.isWarm(mat, day)) {
                long today = layout.common(mat, day);
                if ((shared & today) == 0) {
                    turns++;
                    shared = today;
                } else {
                    shared &= today;
                }
            }
        }
        return turns;
    }

    /** The set-points of all mats, mat by mat and in the order of days. */
    static List<SetPointSpan> spans(Layout layout) {
        List<SetPointSpan> spans = new ArrayList<>();
        for (int mat = 0; mat < layout.ground.mats; mat++) {
            addSpans(layout, mat, spans);
        }
        return spans;
    }

    private static void addSpans(Layout layout, int mat, List<SetPointSpan> spans) {
        int day = 0;
        while (day < layout.ground.days) {
            int end = day;
            long shared = -1;
            while (end < layout.ground.days && (!layout.isWarm(mat, end) || (shared & layout.common(mat, end)) != 0)) {
                shared &= layout.isWarm(mat, end) ? layout.common(mat, end) : -1;
                end++;
            }
            if (end == day) {
                throw new IllegalStateException("no set-point suits everything that lies on a mat on one day");
            }
            addWarm(layout, mat, day, end, middle(shared), spans);
            day = end;
        }
    }

    private static void addWarm(Layout layout, int mat, int from, int to, int celsius, List<SetPointSpan> spans) {
        String id = layout.ground.question.mats().get(mat).id();
        int day = from;
        while (day < to) {
            int end = day;
            while (end < to && layout.isWarm(mat, end)) {
                end++;
            }
            if (end > day) {
                spans.add(new SetPointSpan(id, layout.ground.range(day, end), celsius));
            }
            day = end + 1;
        }
    }

    /** The middle one of the degrees, which is the furthest from what would not suit. */
    private static int middle(long degrees) {
        int skip = (Long.bitCount(degrees) - 1) / 2;
        long rest = degrees;
        for (int i = 0; i < skip; i++) {
            rest &= rest - 1;
        }
        return Long.numberOfTrailingZeros(rest);
    }
}
