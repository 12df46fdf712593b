package warmshelf.finding.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import warmshelf.words.DayWords;

/**
 * A bar for each week: how much of the space was used.
 *
 * @param bars in order of time
 * @param marks the weeks that are named below, few enough to be read
 */
record WeekChart(List<Bar> bars, List<Mark> marks) {
    private static final double LEFT = 44;
    private static final double RIGHT = 430;
    static final double TOP = 10;
    static final double BOTTOM = 150;
    private static final int MOST_MARKS = 5;

    /** Pixels of a bar. */
    record Bar(String x, String y, String width, String height) {}

    /** @param x pixels from the left */
    record Mark(String x, String words) {}

    /** Of the mats' space, or of that under light. */
    static WeekChart of(List<SpaceWeek> weeks, boolean mats) {
        double step = (RIGHT - LEFT) / weeks.size();
        int between = (weeks.size() + MOST_MARKS - 1) / MOST_MARKS;
        List<Bar> bars = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < weeks.size(); i++) {
            SpaceWeek week = weeks.get(i);
            double height = (BOTTOM - TOP) * Math.min(1, mats ? week.matShare() : week.lightShare());
            double x = LEFT + i * step;
            bars.add(new Bar(pixel(x + step * 0.1), pixel(BOTTOM - height), pixel(step * 0.8), pixel(height)));
            if (i % between == 0) {
                marks.add(new Mark(pixel(x + step / 2), DayWords.date(week.monday())));
            }
        }
        return new WeekChart(bars, marks);
    }

    private static String pixel(double at) {
        return String.format(Locale.ROOT, "%.1f", at);
    }
}
