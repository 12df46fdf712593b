package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import warmshelf.label.paper.LabelMedium;
import warmshelf.label.paper.LabelStock;
import warmshelf.label.paper.StockTable;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;
import warmshelf.web.Refusal;
import warmshelf.web.Respond;
import warmshelf.web.Role;
import warmshelf.web.Visitor;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** The group's own sizes of labels. */
final class LabelStockPages implements Pages {
    private static final String ADDRESS = LabelPages.ADDRESS + "/sizes";
    private static final String TEMPLATE = "label/sizes.peb";
    private static final List<Choice> MEDIA = Arrays.stream(LabelMedium.values())
            .map(medium -> new Choice(medium.word(), LabelWords.of(medium)))
            .toList();

    private final LabelStockStore stocks;
    private final BrowserSession browsers;

    LabelStockPages(LabelStockStore stocks, BrowserSession browsers) {
        this.stocks = stocks;
        this.browsers = browsers;
    }

    @Override
    public void register(RoutesConfig routes) {
        routes.get(ADDRESS, this::list, Role.MEMBER);
        routes.post(ADDRESS, this::add, Role.MEMBER);
        routes.post(ADDRESS + "/{id}/removal", this::remove, Role.MEMBER);
    }

    private record SizesPage(
            FormReader form, List<LabelStock> own, List<LabelStock> usual, List<Choice> media, String unit) {}

    private SizesPage page(Context ctx, FormReader form) {
        return new SizesPage(
                form,
                stocks.own(),
                StockTable.all(),
                MEDIA,
                Visitor.of(ctx).units().inInches() ? "inches" : "millimetres");
    }

    private void list(Context ctx) {
        Respond.page(ctx, TEMPLATE, page(ctx, new FormReader(Map.of("medium", List.of(LabelMedium.ROLL.word())))));
    }

    private void add(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        LabelStockForm form = LabelStockForm.of(ctx.formParamMap(), visitor.units());
        form.stock()
                .filter(stock -> LabelSet.of(stock, List.of(), browsers.wholeAddress(ctx, ""))
                        .isEmpty())
                .ifPresent(stock -> form.form().refuse("width", SAY.tooSmall(stock.measures(visitor.units()))));
        if (!form.form().ok()) {
            Respond.again(ctx, TEMPLATE, page(ctx, form.form()));
            return;
        }
        LabelStock stock = form.stock().orElseThrow();
        stocks.add(stock, visitor.memberId());
        Respond.seeOther(
                ctx, LabelPages.ADDRESS + "?stock=" + stock.key(), SAY.sizeAdded(stock.words(visitor.units())));
    }

    private void remove(Context ctx) {
        if (!stocks.remove(Respond.id(ctx, "id"), Visitor.of(ctx).memberId())) {
            throw Refusal.notFound();
        }
        Respond.seeOther(ctx, ADDRESS, SAY.sizeRemoved());
    }
}
