package warmshelf.label.paper;

/**
 * A sheet with one line across and one down, that meet in a corner at the same distance from both edges.
 *
 * @param pageWidth in millimetres, as all of it
 * @param across how long the line across is drawn
 * @param down how long the line down is drawn
 * @param corner how far the corner is from the left and from the upper edge
 */
public record CalibrationSheet(double pageWidth, double pageHeight, double across, double down, double corner) {
    private static final double LARGE = 100;
    private static final double TEN = 10;

    /** For paper of a size: lines of full centimetres, with room for what a printer cannot reach. */
    public static CalibrationSheet on(double pageWidth, double pageHeight) {
        double corner = Math.min(pageWidth, pageHeight) >= LARGE ? 20 : 3;
        return new CalibrationSheet(
                pageWidth, pageHeight, length(pageWidth - 2 * corner), length(pageHeight - 2 * corner), corner);
    }

    private static double length(double room) {
        return room >= TEN ? Math.floor(room / TEN) * TEN : Math.max(1, Math.floor(room));
    }
}
