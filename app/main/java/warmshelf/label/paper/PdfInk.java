package warmshelf.label.paper;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDFormContentStream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;

/** Draws on a page of a PDF in millimetres from its upper left corner. Each letter is kept once in the file, however often it stands there. */
final class PdfInk implements AutoCloseable {
    static final double POINTS = 72 / 25.4;

    /** Outlines are written in thousandths of the em: numbers in a PDF have few decimals. */
    private static final double FINE = 1000;

    private static final double BEYOND = 3;

    private final PDPageContentStream page;
    private final Texts texts;

    PdfInk(PDDocument pdf, double width, double height, PrinterScale printer, Texts texts) throws IOException {
        PDPage sheet = new PDPage(new PDRectangle((float) (width * POINTS), (float) (height * POINTS)));
        pdf.addPage(sheet);
        this.page = new PDPageContentStream(pdf, sheet, PDPageContentStream.AppendMode.OVERWRITE, true);
        this.texts = texts;
        page.transform(new Matrix(
                (float) (POINTS / printer.scaleAcross()),
                0,
                0,
                (float) (-POINTS / printer.scaleDown()),
                (float) (-printer.shiftAcross() / printer.scaleAcross() * POINTS),
                (float) ((height + printer.shiftDown() / printer.scaleDown()) * POINTS)));
    }

    /** The texts of one file. */
    static final class Texts {
        private final PDDocument pdf;
        private final Lettering letters;
        private final Map<String, PDFormXObject> drawn = new HashMap<>();

        Texts(PDDocument pdf, Lettering letters) {
            this.pdf = pdf;
            this.letters = letters;
        }

        private PDFormXObject of(String text, boolean bold) throws IOException {
            String key = (bold ? "b" : "r") + text;
            PDFormXObject known = drawn.get(key);
            if (known != null) {
                return known;
            }
            Lettering.Run run = letters.run(text, bold);
            PDFormXObject form = new PDFormXObject(pdf);
            form.setBBox(new PDRectangle(
                    (float) (-BEYOND * FINE),
                    (float) (-BEYOND * FINE),
                    (float) ((run.width() + 2 * BEYOND) * FINE),
                    (float) (2 * BEYOND * FINE)));
            try (PDFormContentStream stream = new PDFormContentStream(form)) {
                outline(stream, run.outline());
            }
            drawn.put(key, form);
            return form;
        }

        private static void outline(PDFormContentStream stream, Shape shape) throws IOException {
            double[] at = new double[6];
            double x = 0;
            double y = 0;
            boolean any = false;
            for (PathIterator path = shape.getPathIterator(null); !path.isDone(); path.next()) {
                any = true;
                int kind = path.currentSegment(at);
                for (int i = 0; i < at.length; i++) {
                    at[i] *= FINE;
                }
                switch (kind) {
                    case PathIterator.SEG_MOVETO -> stream.moveTo((float) at[0], (float) at[1]);
                    case PathIterator.SEG_LINETO -> stream.lineTo((float) at[0], (float) at[1]);
                    // A PDF has no quadratic curves; the cubic one with these points is the same.
                    case PathIterator.SEG_QUADTO ->
                        stream.curveTo(
                                (float) (x + 2 * (at[0] - x) / 3),
                                (float) (y + 2 * (at[1] - y) / 3),
                                (float) (at[2] + 2 * (at[0] - at[2]) / 3),
                                (float) (at[3] + 2 * (at[1] - at[3]) / 3),
                                (float) at[2],
                                (float) at[3]);
                    case PathIterator.SEG_CUBICTO ->
                        stream.curveTo(
                                (float) at[0], (float) at[1], (float) at[2], (float) at[3], (float) at[4], (float)
                                        at[5]);
                    default -> stream.closePath();
                }
                int last = kind == PathIterator.SEG_CUBICTO ? 4 : kind == PathIterator.SEG_QUADTO ? 2 : 0;
                if (kind != PathIterator.SEG_CLOSE) {
                    x = at[last];
                    y = at[last + 1];
                }
            }
            if (any) {
                stream.fill();
            }
        }
    }

    /** Does something with the corner moved, and all turned to run down the page where it is turned. */
    void at(double x, double y, double width, boolean turned, Drawing drawing) throws IOException {
        page.saveGraphicsState();
        page.transform(
                turned
                        ? new Matrix(0, 1, -1, 0, (float) (x + width), (float) y)
                        : new Matrix(1, 0, 0, 1, (float) x, (float) y));
        drawing.on(this);
        page.restoreGraphicsState();
    }

    /** What is drawn at a place. */
    @FunctionalInterface
    interface Drawing {
        void on(PdfInk ink) throws IOException;
    }

    void text(LabelDrawing.Written text) throws IOException {
        page.saveGraphicsState();
        float scale = (float) (text.size() / FINE);
        page.transform(new Matrix(scale, 0, 0, scale, (float) text.x(), (float) text.baseline()));
        for (String piece : Lettering.pieces(text.text())) {
            Lettering.Run run = texts.letters.run(piece, text.bold());
            if (!piece.isBlank()) {
                page.drawForm(texts.of(piece, text.bold()));
            }
            page.transform(Matrix.getTranslateInstance((float) (run.width() * FINE), 0));
        }
        page.restoreGraphicsState();
    }

    void square(QrSquare qr, double x, double y) throws IOException {
        page.saveGraphicsState();
        float module = (float) qr.module();
        float quiet = (float) (QrSquare.QUIET * qr.module());
        page.transform(new Matrix(module, 0, 0, module, (float) x + quiet, (float) y + quiet));
        for (QrSquare.Run run : qr.runs()) {
            // A little over the next row: else readers on screen leave a light hair between two.
            page.addRect(run.x(), run.y(), run.length(), 1.02f);
        }
        page.fill();
        page.restoreGraphicsState();
    }

    /** A hairline around something, to cut along. */
    void frame(double x, double y, double width, double height) throws IOException {
        page.setLineWidth(0.1f);
        page.addRect((float) x, (float) y, (float) width, (float) height);
        page.stroke();
    }

    void line(double fromX, double fromY, double toX, double toY) throws IOException {
        page.setLineWidth(0.2f);
        page.moveTo((float) fromX, (float) fromY);
        page.lineTo((float) toX, (float) toY);
        page.stroke();
    }

    @Override
    public void close() throws IOException {
        page.close();
    }
}
