package warmshelf.table;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/** Writes a table row by row and keeps none. Dates are ISO 8601, what is not known is empty, no text is a formula. */
public final class TableWriter {
    private static final char MARK = '\uFEFF';

    private final TableShape shape;
    private final CSVPrinter printer;

    /** Begins a table with the row that names its columns. */
    public TableWriter(Appendable out, TableShape shape, List<String> columns) throws IOException {
        if (shape.marked()) {
            out.append(MARK);
        }
        this.shape = shape;
        printer = new CSVPrinter(
                out, CSVFormat.RFC4180.builder().setDelimiter(shape.separator()).get());
        printer.printRecord(columns);
    }

    /** Adds a row; numbers may be any {@link Number}, dates any of {@code java.time}, and null is not known. */
    public void row(@Nullable Object... cells) throws IOException {
        for (Object cell : cells) {
            printer.print(shown(cell));
        }
        printer.println();
    }

    private @Nullable Object shown(@Nullable Object cell) {
        if (cell instanceof Double || cell instanceof BigDecimal) {
            String number = new BigDecimal(cell.toString()).toPlainString();
            return shape.decimalComma() ? number.replace('.', ',') : number;
        }
        if (cell instanceof String text) {
            return FormulaGuard.guarded(text);
        }
        return cell == null ? null : cell.toString();
    }
}
