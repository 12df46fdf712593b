package warmshelf.label;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/**
 * A QR code (ISO/IEC 18004) as a path in an SVG whose unit is one module. Error correction M restores about 15 % of it, which is
 * plenty for a damp label.
 *
 * @param side modules on a side, the quiet zone of four on each edge included
 * @param path the dark modules, run by run
 */
public record QrPicture(int side, String path) {
    private static final int QUIET = 4;

    public static QrPicture of(String text) {
        ByteMatrix modules = modules(text);
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            int x = 0;
            while (x < modules.getWidth()) {
                int end = x;
                while (end < modules.getWidth() && modules.get(end, y) == 1) {
                    end++;
                }
                if (end > x) {
                    path.append("M%d %dh%dv1h-%dz".formatted(x + QUIET, y + QUIET, end - x, end - x));
                }
                x = end + 1;
            }
        }
        return new QrPicture(modules.getWidth() + 2 * QUIET, path.toString());
    }

    private static ByteMatrix modules(String text) {
        try {
            return Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("too long for a QR code: " + text.length() + " signs", tooLong);
        }
    }
}
