package warmshelf.label.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What stands in the PDF, read from its drawing orders by PDFBox's interpreter. */
class LabelPdfTest {
    private static final double POINT = 25.4 / 72;

    static List<LabelStock> everyStock() {
        return StockTable.all();
    }

    @ParameterizedTest
    @MethodSource("everyStock")
    void each_label_is_as_large_and_lies_where_the_table_says_within_a_tenth_of_a_millimetre(LabelStock stock)
            throws Exception {
        int labels = stock.toAPage() + 1;
        LabelDrawing label = label(stock);
        byte[] pdf =
                LabelPdf.of(new LabelPdf.Setting(stock, PrinterScale.NONE, 1, true), copies(label, labels), "Labels");

        try (PDDocument read = Loader.loadPDF(pdf)) {
            assertThat(read.getNumberOfPages()).isEqualTo(2);
            PDPage page = read.getPage(0);
            assertThat(page.getMediaBox().getWidth() * POINT).isEqualTo(stock.pageWidth(), within(0.1));
            assertThat(page.getMediaBox().getHeight() * POINT).isEqualTo(stock.pageHeight(), within(0.1));
            List<Rectangle2D> frames = Frames.on(page);
            assertThat(frames).hasSize(stock.toAPage());
            for (int i = 0; i < frames.size(); i++) {
                LabelStock.Slot slot = stock.slot(i);
                assertThat(frames.get(i).getX()).isEqualTo(slot.x(), within(0.1));
                assertThat(frames.get(i).getY()).isEqualTo(slot.y(), within(0.1));
                assertThat(frames.get(i).getWidth()).isEqualTo(stock.width(), within(0.1));
                assertThat(frames.get(i).getHeight()).isEqualTo(stock.height(), within(0.1));
            }
        }
    }

    @Test
    void a_begun_sheet_is_used_up_from_the_label_named() throws Exception {
        LabelStock stock = StockTable.find("a4-21").orElseThrow();
        byte[] pdf = LabelPdf.of(
                new LabelPdf.Setting(stock, PrinterScale.NONE, 21, true), copies(label(stock), 2), "Labels");

        try (PDDocument read = Loader.loadPDF(pdf)) {
            Rectangle2D last = Frames.on(read.getPage(0)).get(0);
            assertThat(last.getX()).isEqualTo(139.25, within(0.1));
            assertThat(last.getY()).isEqualTo(243.75, within(0.1));
            assertThat(Frames.on(read.getPage(1)).get(0).getY()).isEqualTo(15.15, within(0.1));
        }
    }

    /** A printer that shrinks to 98 and 97 % and prints 2 mm too far right and 1 mm too high: what it then prints is true. */
    @Test
    void what_was_read_on_the_calibration_sheet_brings_labels_where_they_belong() throws Exception {
        LabelStock stock = StockTable.find("letter-30").orElseThrow();
        CalibrationSheet sheet = CalibrationSheet.on(stock.pageWidth(), stock.pageHeight());
        PrinterScale printer = PrinterScale.read(
                sheet,
                sheet.across() * 0.98,
                sheet.down() * 0.97,
                sheet.corner() * 0.98 + 2,
                sheet.corner() * 0.97 - 1);
        byte[] pdf = LabelPdf.of(new LabelPdf.Setting(stock, printer, 1, true), copies(label(stock), 30), "Labels");

        try (PDDocument read = Loader.loadPDF(pdf)) {
            List<Rectangle2D> frames = Frames.on(read.getPage(0));
            for (int i = 0; i < frames.size(); i++) {
                assertThat(frames.get(i).getX() * 0.98 + 2)
                        .isEqualTo(stock.slot(i).x(), within(0.1));
                assertThat(frames.get(i).getY() * 0.97 - 1)
                        .isEqualTo(stock.slot(i).y(), within(0.1));
                assertThat(frames.get(i).getWidth() * 0.98).isEqualTo(stock.width(), within(0.1));
            }
        }
    }

    @Test
    void the_lines_of_a_calibration_sheet_are_as_long_as_the_page_says() throws Exception {
        CalibrationSheet sheet = CalibrationSheet.on(210, 297);

        try (PDDocument read = Loader.loadPDF(LabelPdf.calibration(sheet, List.of("Measure"), "Sheet"))) {
            List<Rectangle2D> lines = Frames.linesOn(read.getPage(0));
            assertThat(sheet.across()).isEqualTo(170);
            assertThat(sheet.down()).isEqualTo(250);
            assertThat(lines.get(0).getWidth()).isEqualTo(170, within(0.1));
            assertThat(lines.get(0).getX()).isEqualTo(20, within(0.1));
            assertThat(lines.get(1).getHeight()).isEqualTo(250, within(0.1));
        }
    }

    @Test
    void no_font_is_needed_to_print_it() throws Exception {
        LabelStock stock = StockTable.find("letter-10").orElseThrow();
        byte[] pdf = LabelPdf.of(
                new LabelPdf.Setting(stock, PrinterScale.NONE, 1, false), copies(label(stock), 10), "Labels");

        try (PDDocument read = Loader.loadPDF(pdf)) {
            PDPage page = read.getPage(0);
            assertThat(page.getResources().getFontNames()).isEmpty();
            for (COSName name : page.getResources().getXObjectNames()) {
                assertThat(page.getResources().getXObject(name).getCOSObject().containsKey(COSName.FONT))
                        .isFalse();
            }
        }
    }

    /** By the letters' own outlines: in Hebrew and Devanagari some stand elsewhere than they are written (Unicode UAX 9). */
    @Test
    void letters_of_other_scripts_are_shaped_and_run_their_own_way() {
        // the first letter, alef, stands right of the second, bet
        assertThat(looksLike("אב", 0, "ב")).isTrue();
        assertThat(looksLike("אב", width("ב"), "א")).isTrue();
        assertThat(looksLike("ab", 0, "a")).isTrue();
        // the sign for i is written after its letter and stands before it
        assertThat(looksLike("कि", width("कि") - width("क"), "क")).isTrue();
        assertThat(looksLike("कि", 0, "क")).isFalse();
        // lam and alef join to one form that is narrower than both
        assertThat(width("لا")).isLessThan(0.9 * (width("ل") + width("ا")));
    }

    private static double width(String text) {
        return Lettering.bundled().width(text, false);
    }

    /** Whether a letter, as it stands alone, is what one sees in a text so far from its left end. */
    private static boolean looksLike(String text, double from, String letter) {
        Shape whole = Lettering.bundled().run(text, false).outline();
        Shape alone = Lettering.bundled().run(letter, false).outline();
        Rectangle2D box = alone.getBounds2D();
        for (double x = box.getMinX(); x <= box.getMaxX(); x += 0.01) {
            for (double y = box.getMinY(); y <= box.getMaxY(); y += 0.01) {
                // a little off the edges, whose points are rounded
                if (alone.contains(x, y, 0.004, 0.004) && !whole.contains(x + from + 0.001, y + 0.001)) {
                    return false;
                }
            }
        }
        return true;
    }

    @Test
    void each_usual_script_can_be_written_and_what_cannot_is_known_beforehand() {
        Lettering letters = Lettering.bundled();

        assertThat(List.of(
                        "Łucja Øst",
                        "Ελένη",
                        "Дарья",
                        "שרה",
                        "محمد",
                        "Արամ",
                        "ნინო",
                        "สมชาย",
                        "ລາວ",
                        "काली",
                        "মিতা",
                        "ਹਰਪ੍ਰੀਤ",
                        "ગીતા",
                        "தமிழ்",
                        "తెలుగు",
                        "ಕನ್ನಡ",
                        "മലയാളം",
                        "සිංහල",
                        "ខ្មែរ",
                        "မြန်မာ",
                        "አማርኛ",
                        "王小明",
                        "さくら",
                        "김철수"))
                .allMatch(letters::canWrite);
        assertThat(letters.canWrite("𓀀")).isFalse();
        assertThat(letters.canWrite("Tom 𓀀")).isFalse();
    }

    private static LabelDrawing label(LabelStock stock) {
        return new LabelLayout(stock, Lettering.bundled())
                .of(SampleLabels.full())
                .orElseThrow();
    }

    private static List<LabelDrawing> copies(LabelDrawing label, int number) {
        return java.util.Collections.nCopies(number, label);
    }

    /** Finds stroked rectangles and lines, in millimetres from the page's upper left corner. */
    private static final class Frames extends PDFGraphicsStreamEngine {
        private final List<Rectangle2D> frames = new ArrayList<>();
        private final List<Rectangle2D> lines = new ArrayList<>();
        private final List<Rectangle2D> begun = new ArrayList<>();
        private final double height;
        private Point2D at = new Point2D.Double();

        private Frames(PDPage page) {
            super(page);
            this.height = page.getMediaBox().getHeight();
        }

        static List<Rectangle2D> on(PDPage page) throws IOException {
            return read(page).frames;
        }

        static List<Rectangle2D> linesOn(PDPage page) throws IOException {
            return read(page).lines;
        }

        private static Frames read(PDPage page) throws IOException {
            Frames frames = new Frames(page);
            frames.processPage(page);
            return frames;
        }

        private Rectangle2D between(Point2D a, Point2D b) {
            Rectangle2D box = new Rectangle2D.Double();
            box.setFrameFromDiagonal(
                    a.getX() * POINT, (height - a.getY()) * POINT, b.getX() * POINT, (height - b.getY()) * POINT);
            return box;
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
            begun.add(between(p0, p2));
        }

        @Override
        public void strokePath() {
            frames.addAll(begun);
            begun.clear();
        }

        @Override
        public void fillPath(int windingRule) {
            begun.clear();
        }

        @Override
        public void lineTo(float x, float y) {
            lines.add(between(at, new Point2D.Double(x, y)));
        }

        @Override
        public void moveTo(float x, float y) {
            at = new Point2D.Double(x, y);
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            at = new Point2D.Double(x3, y3);
        }

        @Override
        public Point2D getCurrentPoint() {
            return at;
        }

        @Override
        public void drawImage(PDImage image) {
            throw new AssertionError("a label holds no picture");
        }

        @Override
        public void clip(int windingRule) {
            // nothing is drawn that a clip could hide
        }

        @Override
        public void closePath() {
            // outlines of letters are not looked at
        }

        @Override
        public void endPath() {
            begun.clear();
        }

        @Override
        public void fillAndStrokePath(int windingRule) {
            begun.clear();
        }

        @Override
        public void shadingFill(COSName shading) {
            throw new AssertionError("a label holds no shading");
        }
    }
}
