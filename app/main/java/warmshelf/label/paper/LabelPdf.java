package warmshelf.label.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import warmshelf.label.paper.LabelDrawing.Written;

/** Labels and calibration sheets as PDF. Text stands in it as outlines, so that no font is needed to print it. */
public final class LabelPdf {
    private static final double TICK = 3;
    private static final double WORDS = 4;
    private static final double CENTIMETRE = 10;

    private LabelPdf() {}

    /**
     * How labels are put on paper.
     *
     * @param startAt the number of the first label used on the first page, from 1
     * @param cuttingLines whether each label is framed, for plain paper
     */
    public record Setting(LabelStock stock, PrinterScale printer, int startAt, boolean cuttingLines) {}

    /** The file with all labels in their order. */
    public static byte[] of(Setting setting, List<LabelDrawing> labels, String title) {
        return written(title, (pdf, texts) -> {
            LabelStock stock = setting.stock();
            int next = setting.startAt() - 1;
            int from = 0;
            while (from < labels.size()) {
                int page = stock.slot(next).page();
                try (PdfInk ink = new PdfInk(pdf, stock.pageWidth(), stock.pageHeight(), setting.printer(), texts)) {
                    while (from < labels.size() && stock.slot(next).page() == page) {
                        draw(ink, setting, stock.slot(next), labels.get(from));
                        next++;
                        from++;
                    }
                }
            }
        });
    }

    private static void draw(PdfInk ink, Setting setting, LabelStock.Slot slot, LabelDrawing label) throws IOException {
        LabelStock stock = setting.stock();
        if (setting.cuttingLines()) {
            ink.frame(slot.x(), slot.y(), stock.width(), stock.height());
        }
        ink.at(slot.x(), slot.y(), stock.width(), stock.isTurned(), inside -> {
            if (label.qr() != null) {
                inside.square(label.qr(), label.qrX(), label.qrY());
            }
            for (Written text : label.written()) {
                inside.text(text);
            }
        });
    }

    /**
     * A sheet by which somebody measures how true a printer is.
     *
     * @param words what is to be done with it, line by line
     */
    public static byte[] calibration(CalibrationSheet sheet, List<String> words, String title) {
        return written(title, (pdf, texts) -> {
            try (PdfInk ink = new PdfInk(pdf, sheet.pageWidth(), sheet.pageHeight(), PrinterScale.NONE, texts)) {
                double corner = sheet.corner();
                ink.line(corner, corner, corner + sheet.across(), corner);
                ink.line(corner, corner, corner, corner + sheet.down());
                for (double at = 0; at <= sheet.across(); at += CENTIMETRE) {
                    ink.line(corner + at, corner, corner + at, corner + tick(at, sheet.across()));
                }
                for (double at = 0; at <= sheet.down(); at += CENTIMETRE) {
                    ink.line(corner, corner + at, corner + tick(at, sheet.down()), corner + at);
                }
                double size = Math.min(WORDS, sheet.pageHeight() / 12);
                double down = corner + 3 * size + TICK;
                for (String line : words) {
                    ink.text(new Written(line, false, corner + 2 * TICK, down, size));
                    down += 1.5 * size;
                }
            }
        });
    }

    private static double tick(double at, double length) {
        return at == 0 || at == length ? TICK : TICK / 2;
    }

    /** What is drawn into a file. */
    private interface Content {
        void into(PDDocument pdf, PdfInk.Texts texts) throws IOException;
    }

    private static byte[] written(String title, Content content) {
        try (PDDocument pdf = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            PDDocumentInformation about = new PDDocumentInformation();
            about.setTitle(title);
            pdf.setDocumentInformation(about);
            content.into(pdf, new PdfInk.Texts(pdf, Lettering.bundled()));
            pdf.save(out);
            return out.toByteArray();
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
    }
}
