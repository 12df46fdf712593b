package warmshelf.finding.trial;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.finding.CurveChart;
import warmshelf.finding.WayFound;
import warmshelf.words.FormReader;

/**
 * The page of one trial.
 *
 * @param title for example 'Trial 3: Tray or bag'
 * @param words what it comes to, or how far it is, the answer first
 * @param doubts what to say beside it
 * @param leftOut which ways of which blocks are left out, and why
 * @param chart the curves; null: nothing was counted
 * @param curves the same as figures, a row for each day on which something changed
 * @param ways what each way came to
 * @param pairs each two of three ways
 * @param mayJoin whether the visitor may carry a block
 * @param asks whose seed a block of the visitor's would ask for; empty: nobody's
 */
record TrialReportPage(
        String title,
        Trial trial,
        String crop,
        TrialState state,
        List<String> words,
        List<String> doubts,
        List<String> leftOut,
        @Nullable CurveChart chart,
        List<CurveRow> curves,
        List<WayRow> ways,
        List<PairRow> pairs,
        List<BlockRow> blocks,
        boolean mayJoin,
        String asks,
        FormReader form) {
    /**
     * What a way came to over all its blocks.
     *
     * @param share of its seeds, 0 to 1, with its 95 % interval (Wilson)
     * @param half the day by which half of those that came up had; empty: none did
     */
    public record WayRow(
            String letter, String name, int came, int seeds, double share, double low, double high, String half) {}

    /** How many had come by a day, in 100 seeds of each way. */
    public record CurveRow(int day, List<Long> shares) {
        static List<CurveRow> of(List<WayFound> ways) {
            TreeSet<Integer> days = new TreeSet<>();
            for (WayFound way : ways) {
                way.curve().steps().forEach(step -> days.add((int) Math.ceil(step.by())));
            }
            return days.stream()
                    .map(day -> new CurveRow(
                            day,
                            ways.stream()
                                    .map(way -> Math.round(100 * way.curve().shareBy(day)))
                                    .toList()))
                    .toList();
        }
    }

    /** Two ways against each other, in words. */
    public record PairRow(String title, List<String> words) {}

    /**
     * A block with what became of its ways.
     *
     * @param mine whether the visitor carries it
     */
    public record BlockRow(
            int number, String member, boolean mine, LocalDate sowOn, TrialDraw draw, List<SowingRow> sowings) {}

    /** A way of a block. */
    public record SowingRow(UUID id, String letter, String name, String stage, int up, int seeds) {}
}
