package warmshelf.label;

import java.util.List;
import warmshelf.sowing.SowingStores;
import warmshelf.web.BrowserSession;
import warmshelf.web.Pages;

/** Labels and codes, wired. */
public final class LabelRoom {
    private LabelRoom() {}

    public static List<Pages> pages(SowingStores stores, BrowserSession browsers) {
        CodeStore codes = new CodeStore(stores.database(), stores.audit());
        LabelRunStore runs = new LabelRunStore(stores.database(), stores.audit());
        LabelStockStore stocks = new LabelStockStore(stores.database(), stores.audit());
        LabelPrinterStore printers = new LabelPrinterStore(stores.database(), stores.audit());
        LabelSource source = new LabelSource(stores, codes, runs);
        LabelChoices choices = new LabelChoices(stocks, printers, runs);
        return List.of(
                new CodePages(codes),
                new LabelPages(source, runs, choices, browsers),
                new LabelRunPages(source, runs, choices, browsers),
                new LabelScreenPages(),
                new LabelStockPages(stocks, browsers),
                new LabelPrinterPages(printers, choices));
    }
}
