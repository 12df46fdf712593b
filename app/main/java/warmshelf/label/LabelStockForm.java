package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import warmshelf.label.paper.LabelMedium;
import warmshelf.label.paper.LabelStock;
import warmshelf.words.FormReader;
import warmshelf.words.Numbers;
import warmshelf.words.Units;

/** A size of labels as typed, in millimetres or inches. */
record LabelStockForm(FormReader form, Optional<LabelStock> stock) {
    private static final double INCH = 25.4;
    private static final double LEAST_MM = 3;
    private static final double LARGEST_MM = 500;
    private static final int MOST_IN_A_ROW = 50;

    private static final List<String> MEDIA =
            Arrays.stream(LabelMedium.values()).map(LabelMedium::word).toList();

    static LabelStockForm of(Map<String, List<String>> typed, Units units) {
        FormReader form = new FormReader(typed);
        double unit = units.inInches() ? INCH : 1;
        Reading in = new Reading(form, unit);
        String name = form.requiredText("name", "Name", 40);
        LabelMedium medium = LabelMedium.withWord(form.choice("medium", "What they come as", MEDIA))
                .orElse(LabelMedium.SHEET);
        double width = in.required("width", "Label’s width");
        double height = in.required("height", "Label’s height");
        LabelStock stock = medium == LabelMedium.SHEET
                ? in.sheet(name, width, height)
                : LabelStock.single(
                        UUID.randomUUID().toString(), medium, name, width, height, in.optional("point", "Not printed"));
        if (form.ok() && !stock.fitsThePage()) {
            form.refuse("columns", SAY.beyondThePage());
        }
        if (form.ok() && stock.along() < LEAST_MM) {
            form.refuse("point", SAY.nothingToPrintOn());
        }
        return new LabelStockForm(form, form.ok() ? Optional.of(stock) : Optional.empty());
    }

    private record Reading(FormReader form, double unit) {
        /** Typed in the reader's unit, in millimetres to a hundredth. */
        double required(String field, String label) {
            return millimetres(form.decimal(field, label, inUnit(LEAST_MM), inUnit(LARGEST_MM)));
        }

        double optional(String field, String label) {
            return millimetres(
                    form.optionalDecimal(field, label, 0, inUnit(LARGEST_MM)).orElse(0));
        }

        LabelStock sheet(String name, double width, double height) {
            return new LabelStock(
                    UUID.randomUUID().toString(),
                    LabelMedium.SHEET,
                    name,
                    required("pageWidth", "Sheet’s width"),
                    required("pageHeight", "Sheet’s height"),
                    width,
                    height,
                    form.wholeNumber("columns", "Columns", 1, MOST_IN_A_ROW),
                    form.wholeNumber("rows", "Rows", 1, MOST_IN_A_ROW),
                    optional("left", "Left margin"),
                    optional("top", "Upper margin"),
                    optional("gapAcross", "Gap between columns"),
                    optional("gapDown", "Gap between rows"),
                    0);
        }

        private double millimetres(double typed) {
            return Numbers.hundredths(typed * unit);
        }

        private double inUnit(double millimetres) {
            return Numbers.hundredths(millimetres / unit);
        }
    }
}
