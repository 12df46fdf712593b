package warmshelf.label.paper;

import warmshelf.words.Numbers;
import warmshelf.words.Units;

/**
 * Blank labels of one size as they go through a printer. All measures are in millimetres; of sticks, tags and rolls each label is
 * a page of its own.
 *
 * @param key by which it is chosen
 * @param name in words, without its measures
 * @param left from the page's left edge to the first label
 * @param top from the page's upper edge to the first label
 * @param gapAcross between two labels side by side
 * @param gapDown between two labels one below the other
 * @param point how much of a stick's length goes into the compost, and is not printed
 */
public record LabelStock(
        String key,
        LabelMedium medium,
        String name,
        double pageWidth,
        double pageHeight,
        double width,
        double height,
        int columns,
        int rows,
        double left,
        double top,
        double gapAcross,
        double gapDown,
        double point) {

    /** So much may a printed measure be rounded. */
    private static final double ROUNDED = 0.6;

    /** Labels of which each is a page. */
    public static LabelStock single(
            String key, LabelMedium medium, String name, double width, double height, double point) {
        return new LabelStock(key, medium, name, width, height, width, height, 1, 1, 0, 0, 0, 0, point);
    }

    /** Where a label lies: on which page, from 0, and how far its corner is from the page's upper left one. */
    public record Slot(int page, double x, double y) {}

    /** How many a page holds. */
    public int toAPage() {
        return columns * rows;
    }

    /** The place of a label by its number from 0, along the rows. */
    public Slot slot(int number) {
        int onPage = number % toAPage();
        int row = onPage / columns;
        return new Slot(
                number / toAPage(), left + onPage % columns * (width + gapAcross), top + row * (height + gapDown));
    }

    /** Whether all labels lie on the page. */
    public boolean fitsThePage() {
        return left + columns * width + (columns - 1) * gapAcross <= pageWidth + ROUNDED
                && top + rows * height + (rows - 1) * gapDown <= pageHeight + ROUNDED;
    }

    /** Whether it is printed along its longer side by being turned. */
    public boolean isTurned() {
        return height > width;
    }

    /** The longer side, as far as it is printed. */
    public double along() {
        return Math.max(width, height) - point;
    }

    /** The shorter side. */
    public double across() {
        return Math.min(width, height);
    }

    /** For example '66.7 × 25.4 mm' or '2.625 × 1 in'. */
    public String measures(Units units) {
        return measures(width, height, units);
    }

    /** Two measures, in inches or millimetres. */
    public static String measures(double width, double height, Units units) {
        return units.inInches()
                ? "%s × %s in".formatted(inches(width), inches(height))
                : "%s × %s mm".formatted(Numbers.oneDecimalAtMost(width), Numbers.oneDecimalAtMost(height));
    }

    private static String inches(double millimetres) {
        return Numbers.plain(Math.round(millimetres / 25.4 * 1000) / 1000.0);
    }

    /** Name and measures, for example 'Letter sheet of 30, 2.625 × 1 in'. */
    public String words(Units units) {
        return "%s, %s".formatted(name, measures(units));
    }
}
