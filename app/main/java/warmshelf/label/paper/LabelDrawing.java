package warmshelf.label.paper;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One label, ready to be drawn: where each thing lies on it, in millimetres from its upper left corner, lying along its longer
 * side.
 *
 * @param qr the QR code, in the left of the label; null: the label is too small for one that can be read
 * @param leftOut for what there was no room
 */
public record LabelDrawing(
        @Nullable QrSquare qr, double qrX, double qrY, List<Written> written, List<LabelPart.Kind> leftOut) {

    /**
     * A piece of text on one line.
     *
     * @param size of the letters (em), in millimetres
     */
    public record Written(String text, boolean bold, double x, double baseline, double size) {}
}
