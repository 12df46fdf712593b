package warmshelf.label;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.label.LabelPrinterStore.MeasuredPrinter;
import warmshelf.label.paper.LabelPdf;
import warmshelf.label.paper.LabelStock;
import warmshelf.label.paper.PrinterScale;

/**
 * How labels are to be printed.
 *
 * @param printer they are scaled for; null: none that was measured
 * @param startAt the first label used on the first sheet, from 1
 */
record LabelWish(LabelStock stock, @Nullable MeasuredPrinter printer, int startAt, boolean cuttingLines) {

    LabelPdf.Setting setting() {
        return new LabelPdf.Setting(
                stock, printer == null ? PrinterScale.NONE : printer.scale(), startAt, cuttingLines);
    }

    LabelRunStore.Manner manner() {
        return new LabelRunStore.Manner(stock.key(), printer == null ? null : printer.id(), startAt, cuttingLines);
    }

    /** How it was done last, going on where the last sheet was left; what did not come out is printed on the same labels again. */
    static LabelWish after(LabelRun last, LabelStock stock, Optional<MeasuredPrinter> printer) {
        int begun = (last.startAt() - 1) % stock.toAPage();
        int next = last.undone() ? begun : (begun + last.labels()) % stock.toAPage();
        return new LabelWish(stock, printer.orElse(null), next + 1, last.cuttingLines());
    }

    /** How many labels of the last sheet stay blank after so many. */
    int leftAfter(int labels) {
        int used = (startAt - 1 + labels) % stock.toAPage();
        return used == 0 ? 0 : stock.toAPage() - used;
    }
}
