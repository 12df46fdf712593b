package warmshelf.label.paper;

import org.jspecify.annotations.Nullable;

/**
 * How a printer puts things on paper: what is drawn at {@code x} millimetres from the left edge comes out at {@code shiftAcross +
 * scaleAcross · x}, and likewise from the upper edge. What is to be printed is drawn the other way round.
 *
 * @param scaleAcross what a millimetre across becomes; 1 where it is true
 * @param scaleDown what a millimetre down becomes
 * @param shiftAcross millimetres by which all comes out too far right
 * @param shiftDown millimetres by which all comes out too far down
 */
public record PrinterScale(double scaleAcross, double scaleDown, double shiftAcross, double shiftDown) {
    /** A printer that puts everything where it is drawn, as far as anybody knows. */
    public static final PrinterScale NONE = new PrinterScale(1, 1, 0, 0);

    /**
     * From what somebody read on a calibration sheet.
     *
     * @param across what its line across measures, in millimetres
     * @param down what its line down measures
     * @param fromLeft where the corner lies from the paper's left edge; null: not measured
     * @param fromTop where the corner lies from the paper's upper edge; null: not measured
     */
    public static PrinterScale read(
            CalibrationSheet sheet, double across, double down, @Nullable Double fromLeft, @Nullable Double fromTop) {
        double scaleAcross = across / sheet.across();
        double scaleDown = down / sheet.down();
        double corner = sheet.corner();
        return new PrinterScale(
                scaleAcross,
                scaleDown,
                fromLeft == null ? 0 : fromLeft - scaleAcross * corner,
                fromTop == null ? 0 : fromTop - scaleDown * corner);
    }
}
