package warmshelf.response;

import java.util.List;

/**
 * A drawing of days to emergence against temperature, in the units of a box 420 wide and 280 high, small enough for its words
 * to stay legible on a phone. Every figure is text already, so that the page only sets it down.
 *
 * @param description the drawing in words, for those who do not see it
 * @param comfortable the comfortable temperatures
 * @param spread the days between the first and the last twentieth, as points of a polygon
 * @param table the published curve, as points of a polyline
 * @param here the curve as learned here, in the same way; empty while too few sowings were seen
 */
public record ResponseChart(
        String description,
        Stretch comfortable,
        String spread,
        String table,
        String here,
        List<Tick> temperatures,
        List<Tick> days,
        List<Dot> dots) {

    /** A line of the grid: how far along its axis, and its words. */
    public record Tick(String at, String words) {}

    /** A part of the width. */
    public record Stretch(String x, String width) {}

    /**
     * A sowing.
     *
     * @param hollow whether it lay in a bag
     * @param words its figures
     */
    public record Dot(String x, String y, boolean hollow, String words) {}
}
