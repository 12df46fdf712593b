package warmshelf.label.paper;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A QR code (ISO/IEC 18004) of a size that phones and scanners read.
 *
 * @param modules on a side, without the quiet zone
 * @param runs the dark modules, run by run
 * @param module the side of a module in millimetres
 */
public record QrSquare(int modules, List<Run> runs, double module) {
    /** The light margin on each side, in modules, as the standard asks for. */
    static final int QUIET = 4;

    /** Below this, phones no longer read a label held in the hand; common practice, X-dimension 13 mil. */
    static final double LEAST_MODULE = 0.33;

    private static final double MOST_MODULE = 0.6;

    /** The dots of the coarsest usual label printers, 203 to an inch: modules of whole dots print evenly. */
    private static final double DOT = 25.4 / 203;

    /** Dark modules side by side, from 0. */
    public record Run(int x, int y, int length) {}

    /**
     * The largest code of an address in a square, quiet zone included. Error correction M restores about 15 % of it and L about
     * 7 %, which is taken where M would not fit.
     *
     * @param room the side of the square in millimetres
     * @return empty where the square is too small to be read
     */
    static Optional<QrSquare> fitting(String address, double room) {
        for (ErrorCorrectionLevel level : List.of(ErrorCorrectionLevel.M, ErrorCorrectionLevel.L)) {
            ByteMatrix matrix = matrix(address, level);
            double module = Math.min(MOST_MODULE, room / (matrix.getWidth() + 2 * QUIET));
            if (module >= LEAST_MODULE) {
                return Optional.of(new QrSquare(matrix.getWidth(), runs(matrix), wholeDots(module)));
            }
        }
        return Optional.empty();
    }

    /** The code of an address that has a page to itself, as large as that is: its module is the unit. */
    public static QrSquare alone(String address) {
        ByteMatrix matrix = matrix(address, ErrorCorrectionLevel.M);
        return new QrSquare(matrix.getWidth(), runs(matrix), 1);
    }

    /** The dark modules as a path in an SVG whose unit is one module, from 0; the quiet zone lies around it. */
    public String path() {
        StringBuilder path = new StringBuilder();
        for (Run run : runs) {
            path.append("M%d %dh%dv1h-%dz".formatted(run.x(), run.y(), run.length(), run.length()));
        }
        return path.toString();
    }

    /** The light margin on each side, in modules. */
    public int quiet() {
        return QUIET;
    }

    /** The side of the smallest square in which an address can be read, in millimetres, quiet zone included. */
    static double leastRoom(String address) {
        return (matrix(address, ErrorCorrectionLevel.L).getWidth() + 2 * QUIET) * LEAST_MODULE;
    }

    /** Its side in millimetres, quiet zone included. */
    public double side() {
        return (modules + 2 * QUIET) * module;
    }

    private static double wholeDots(double module) {
        double whole = Math.floor(module / DOT + 1e-6) * DOT;
        return whole >= LEAST_MODULE ? whole : module;
    }

    private static List<Run> runs(ByteMatrix matrix) {
        List<Run> runs = new ArrayList<>();
        for (int y = 0; y < matrix.getHeight(); y++) {
            int x = 0;
            while (x < matrix.getWidth()) {
                int end = x;
                while (end < matrix.getWidth() && matrix.get(end, y) == 1) {
                    end++;
                }
                if (end > x) {
                    runs.add(new Run(x, y, end - x));
                }
                x = end + 1;
            }
        }
        return runs;
    }

    private static ByteMatrix matrix(String address, ErrorCorrectionLevel level) {
        try {
            return Encoder.encode(address, level).getMatrix();
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("too long for a QR code: " + address.length() + " signs", tooLong);
        }
    }
}
