package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import warmshelf.label.LabelPrinterStore.MeasuredPrinter;
import warmshelf.label.paper.CalibrationSheet;
import warmshelf.label.paper.LabelPdf;
import warmshelf.label.paper.LabelStock;
import warmshelf.label.paper.PrinterScale;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.FormReader;
import warmshelf.words.Numbers;

/** Printers, measured by a sheet that they print. */
final class LabelPrinterPages implements Pages {
    private static final String ADDRESS = LabelPages.ADDRESS + "/printers";
    private static final String TEMPLATE = "label/printers.peb";
    private static final double LEAST = 0.8;
    private static final double MOST = 1.25;
    private static final double FARTHEST_CORNER = 60;

    private final LabelPrinterStore printers;
    private final LabelChoices choices;

    LabelPrinterPages(LabelPrinterStore printers, LabelChoices choices) {
        this.printers = printers;
        this.choices = choices;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::list, Role.MEMBER);
        routes.get(ADDRESS + "/sheet.pdf", this::sheet, Role.MEMBER);
        routes.post(ADDRESS, this::measure, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/removal", this::remove, Role.MEMBER);
    }

    /** @param stock whose page the calibration sheet has, in words */
    private record PrintersPage(
            FormReader form, List<MeasuredPrinter> printers, String key, String stock, CalibrationSheet sheet) {}

    private PrintersPage page(Context ctx, FormReader form) {
        LabelStock stock = stock(ctx, form.text("stock"));
        return new PrintersPage(
                form,
                printers.all(),
                stock.key(),
                stock.words(Visitor.of(ctx).units()),
                CalibrationSheet.on(stock.pageWidth(), stock.pageHeight()));
    }

    /** The labels that are printed on; those used last where the form does not say. */
    private LabelStock stock(Context ctx, String key) {
        Visitor visitor = Visitor.of(ctx);
        return key.isEmpty()
                ? choices.usual(visitor.memberId(), visitor.country()).stock()
                : choices.stock(key).orElseThrow(Refusal::notFound);
    }

    private void list(Context ctx) {
        Respond.page(ctx, TEMPLATE, page(ctx, new FormReader(ctx.queryParamMap())));
    }

    private void sheet(Context ctx) {
        LabelStock stock =
                stock(ctx, Optional.ofNullable(ctx.queryParam("stock")).orElse(""));
        CalibrationSheet sheet = CalibrationSheet.on(stock.pageWidth(), stock.pageHeight());
        boolean small = Math.min(stock.pageWidth(), stock.pageHeight()) < FARTHEST_CORNER;
        List<String> words = small ? List.of() : List.of(SAY.sheetAcross(), SAY.sheetDown(), SAY.sheetActualSize());
        LabelRunPages.send(ctx, LabelPdf.calibration(sheet, words, SAY.sheetTitle()), "calibration.pdf");
    }

    private void measure(Context ctx) {
        FormReader form = new FormReader(ctx.formParamMap());
        CalibrationSheet sheet = page(ctx, form).sheet();
        String name = form.requiredText("printer", "Printer", 40);
        double across =
                form.decimal("across", "Line across", rounded(sheet.across() * LEAST), rounded(sheet.across() * MOST));
        double down = form.decimal("down", "Line down", rounded(sheet.down() * LEAST), rounded(sheet.down() * MOST));
        OptionalDouble left = form.optionalDecimal("left", "From the left edge", 0, FARTHEST_CORNER);
        OptionalDouble top = form.optionalDecimal("top", "From the upper edge", 0, FARTHEST_CORNER);
        if (!form.ok()) {
            Respond.again(ctx, TEMPLATE, page(ctx, form));
            return;
        }
        printers.measure(
                name,
                PrinterScale.read(sheet, across, down, orNull(left), orNull(top)),
                Visitor.of(ctx).memberId());
        Respond.seeOther(ctx, ADDRESS, SAY.printerMeasured(name));
    }

    private static double rounded(double millimetres) {
        return Numbers.tenths(millimetres);
    }

    private static @Nullable Double orNull(OptionalDouble number) {
        return number.isPresent() ? number.getAsDouble() : null;
    }

    private void remove(Context ctx) {
        if (!printers.remove(Respond.id(ctx, "id"), Visitor.of(ctx).memberId())) {
            throw Refusal.notFound();
        }
        Respond.seeOther(ctx, ADDRESS, SAY.printerRemoved());
    }
}
