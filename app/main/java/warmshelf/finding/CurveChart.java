package warmshelf.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import warmshelf.finding.statistics.GerminationCurve;

/**
 * Curves of germination as they are drawn: the share of all seeds sown over days since sowing. Each has a letter at its end and a dash of
 * its own, so that it is told apart without colour.
 *
 * @param days the marks below, in days
 * @param shares the marks at the left, in percent
 */
public record CurveChart(List<Line> lines, List<Mark> days, List<Mark> shares) {
    /** So many can be told apart; more are a table only. */
    public static final int MOST = 6;

    private static final double LEFT = 44;
    private static final double RIGHT = 390;
    private static final double TOP = 14;
    private static final double BOTTOM = 226;
    private static final int MOST_MARKS = 8;
    private static final double LEAST_DAYS = 7;

    /** How a line is drawn, told apart in grey too. */
    private record Stroke(String dashes, String width) {}

    private static final List<Stroke> STROKES = List.of(
            new Stroke("none", "2.25"),
            new Stroke("8 4", "2.25"),
            new Stroke("2 4", "2.25"),
            new Stroke("10 3 2 3", "2.25"),
            new Stroke("none", "4.5"),
            new Stroke("14 6", "1.25"));

    /**
     * A curve and what it is of.
     *
     * @param letter by which its line is told
     */
    public record Named(String letter, String name, GerminationCurve curve) {
        /** The one of that number, from 0, lettered in its order. */
        public static Named numbered(int number, String name, GerminationCurve curve) {
            return new Named(String.valueOf((char) ('A' + number)), name, curve);
        }
    }

    /**
     * A curve as it is drawn.
     *
     * @param letter that stands at its end, and before its name below
     * @param dashes pixels drawn and left out by turns
     * @param width of its stroke in pixels
     * @param points for a polyline
     * @param endX where the letter stands
     * @param endY its height
     */
    public record Line(
            String letter, String name, String dashes, String width, String points, String endX, String endY) {}

    /**
     * Words beside an axis.
     *
     * @param at pixels from the left or top
     */
    public record Mark(String at, String words) {}

    /** Draws at most {@value #MOST} curves; at least one is needed. */
    public static CurveChart of(List<Named> curves) {
        List<Named> drawn = curves.subList(0, Math.min(MOST, curves.size()));
        double most =
                drawn.stream().mapToDouble(each -> lastDay(each.curve())).max().orElseThrow();
        double days = Math.max(LEAST_DAYS, most + 1);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < drawn.size(); i++) {
            lines.add(line(drawn.get(i), i, days, lines));
        }
        return new CurveChart(lines, dayMarks(days), shareMarks());
    }

    private static double lastDay(GerminationCurve curve) {
        List<GerminationCurve.Point> points = curve.points();
        return points.get(points.size() - 1).day();
    }

    private static Line line(Named named, int number, double days, List<Line> before) {
        List<GerminationCurve.Point> points = new ArrayList<>(named.curve().points());
        GerminationCurve.Point last = points.get(points.size() - 1);
        points.add(new GerminationCurve.Point(days, last.share()));
        String drawn = points.stream()
                .map(point -> pixel(x(point.day(), days)) + "," + pixel(y(point.share())))
                .collect(Collectors.joining(" "));
        double end = y(last.share());
        // letters of curves that end alike stand beside each other
        long beside = before.stream()
                .filter(line -> Math.abs(Double.parseDouble(line.endY()) - end) < 12)
                .count();
        Stroke stroke = STROKES.get(number);
        return new Line(
                named.letter(),
                named.name(),
                stroke.dashes(),
                stroke.width(),
                drawn,
                pixel(RIGHT + 6 + 12 * beside),
                pixel(end));
    }

    private static double x(double day, double days) {
        return LEFT + (RIGHT - LEFT) * day / days;
    }

    private static double y(double share) {
        return BOTTOM - (BOTTOM - TOP) * share;
    }

    private static String pixel(double at) {
        return String.format(Locale.ROOT, "%.1f", at);
    }

    private static List<Mark> dayMarks(double days) {
        int step = 1;
        for (int wider : new int[] {2, 5, 7, 14, 28, 56}) {
            step = days / step > MOST_MARKS ? wider : step;
        }
        List<Mark> marks = new ArrayList<>();
        for (int day = 0; day <= days; day += step) {
            marks.add(new Mark(pixel(x(day, days)), String.valueOf(day)));
        }
        return marks;
    }

    private static List<Mark> shareMarks() {
        return List.of(0, 25, 50, 75, 100).stream()
                .map(percent -> new Mark(pixel(y(percent / 100.0)), percent + " %"))
                .toList();
    }
}
