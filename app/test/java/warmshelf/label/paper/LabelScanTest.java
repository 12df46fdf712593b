package warmshelf.label.paper;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The PDF drawn in black and white by PDFBox's renderer at the dots of usual label printers, and read by ZXing's decoder. */
class LabelScanTest {
    private static final List<Integer> DOTS_AN_INCH = List.of(203, 300);

    static Stream<Arguments> everyStock() {
        return StockTable.all().stream()
                .flatMap(stock -> DOTS_AN_INCH.stream().map(dots -> Arguments.of(stock.key(), stock, dots)));
    }

    @ParameterizedTest(name = "{0} at {2} dots an inch")
    @MethodSource("everyStock")
    void a_scanner_reads_the_code_from_the_printed_label(String key, LabelStock stock, int dots) throws Exception {
        LabelDrawing label = new LabelLayout(stock, Lettering.bundled())
                .of(SampleLabels.full())
                .orElseThrow();
        if (stock.across() < LabelLayout.leastForQr(SampleLabels.ADDRESS)) {
            assertThat(label.qr()).isNull();
            assertThat(label.written()).anyMatch(text -> text.text().equals("K7P 4MX"));
            return;
        }
        int last = stock.toAPage();
        byte[] pdf = LabelPdf.of(
                new LabelPdf.Setting(stock, PrinterScale.NONE, last, stock.medium() == LabelMedium.SHEET),
                List.of(label),
                "Labels");

        assertThat(scanned(pdf, stock, last - 1, dots)).isEqualTo(SampleLabels.ADDRESS);
        assertThat(label.qr()).isNotNull();
        assertThat(label.qr().module()).isGreaterThanOrEqualTo(0.33);
    }

    private static String scanned(byte[] file, LabelStock stock, int number, int dots) throws Exception {
        try (PDDocument pdf = Loader.loadPDF(file)) {
            BufferedImage page = new PDFRenderer(pdf).renderImageWithDPI(0, dots, ImageType.BINARY);
            LabelStock.Slot slot = stock.slot(number);
            double dot = dots / 25.4;
            BufferedImage label = page.getSubimage(
                    (int) (slot.x() * dot),
                    (int) (slot.y() * dot),
                    Math.min((int) (stock.width() * dot), page.getWidth() - (int) (slot.x() * dot)),
                    Math.min((int) (stock.height() * dot), page.getHeight() - (int) (slot.y() * dot)));
            int[] pixels = label.getRGB(0, 0, label.getWidth(), label.getHeight(), null, 0, label.getWidth());
            return new QRCodeReader()
                    .decode(
                            new BinaryBitmap(new HybridBinarizer(
                                    new RGBLuminanceSource(label.getWidth(), label.getHeight(), pixels))),
                            Map.of(DecodeHintType.TRY_HARDER, true))
                    .getText();
        }
    }
}
