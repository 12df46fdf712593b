package warmshelf.label.paper;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.util.List;
import java.util.Locale;

/**
 * A label drawn on a page, as an SVG whose unit is a millimetre.
 *
 * @param width of the whole label, what of a stick is not printed included
 * @param qr the path of the QR code's dark modules, in modules; empty: it has none
 * @param texts each text's outlines
 */
public record LabelPicture(double width, double height, double point, String qr, String qrPlace, List<Text> texts) {

    /** Outlines, and where and how large they are drawn. */
    public record Text(String path, String place) {}

    /** A label of some stock. */
    public static LabelPicture of(LabelStock stock, LabelDrawing label, Lettering letters) {
        QrSquare qr = label.qr();
        return new LabelPicture(
                stock.along() + stock.point(),
                stock.across(),
                stock.point(),
                qr == null ? "" : qr.path(),
                qr == null
                        ? ""
                        : place(
                                label.qrX() + QrSquare.QUIET * qr.module(),
                                label.qrY() + QrSquare.QUIET * qr.module(),
                                qr.module()),
                label.written().stream()
                        .map(text -> new Text(
                                path(letters.run(text.text(), text.bold()).outline()),
                                place(text.x(), text.baseline(), text.size())))
                        .toList());
    }

    /** How far along it is printed. */
    public String printed() {
        return number(width - point);
    }

    private static String place(double x, double y, double scale) {
        return "translate(%s %s) scale(%s)".formatted(number(x), number(y), number(scale));
    }

    private static String path(Shape shape) {
        StringBuilder path = new StringBuilder();
        double[] at = new double[6];
        for (PathIterator each = shape.getPathIterator(null); !each.isDone(); each.next()) {
            int kind = each.currentSegment(at);
            path.append("MLQCZ".charAt(kind));
            int numbers = kind == PathIterator.SEG_CLOSE ? 0 : Math.max(1, kind) * 2;
            for (int i = 0; i < numbers; i++) {
                path.append(i == 0 ? "" : " ").append(number(at[i]));
            }
        }
        return path.toString();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }
}
