package warmshelf.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import warmshelf.label.LabelPrinterStore.MeasuredPrinter;
import warmshelf.label.paper.LabelStock;
import warmshelf.label.paper.StockTable;
import warmshelf.words.Choice;
import warmshelf.words.Units;

/** The labels and printers that there are, and those that were used last. */
final class LabelChoices implements LabelForm.Choices {
    private final LabelStockStore stocks;
    private final LabelPrinterStore printers;
    private final LabelRunStore runs;

    LabelChoices(LabelStockStore stocks, LabelPrinterStore printers, LabelRunStore runs) {
        this.stocks = stocks;
        this.printers = printers;
        this.runs = runs;
    }

    @Override
    public Optional<LabelStock> stock(String key) {
        return stocks.find(key);
    }

    @Override
    public Optional<MeasuredPrinter> printer(UUID id) {
        return printers.find(id);
    }

    /** As the member did it last; else as anybody did, on a sheet of their own; else on the sheet that is usual in a country. */
    LabelWish usual(UUID member, String country) {
        return runs.lastOf(member)
                .flatMap(this::after)
                .or(() -> runs.last()
                        .flatMap(this::after)
                        .map(wish -> new LabelWish(wish.stock(), wish.printer(), 1, wish.cuttingLines())))
                .orElseGet(() -> new LabelWish(StockTable.usualIn(country), null, 1, false));
    }

    private Optional<LabelWish> after(LabelRun last) {
        return stock(last.stock())
                .map(stock -> LabelWish.after(
                        last, stock, Optional.ofNullable(last.printer()).flatMap(this::printer)));
    }

    /** Sizes to choose from: the group's own, then those of the country, with that which is chosen in any case. */
    List<Choice> stocks(String country, Units units, LabelStock chosen) {
        List<LabelStock> all = new ArrayList<>(stocks.own());
        all.addAll(StockTable.forCountry(country));
        if (all.stream().noneMatch(stock -> stock.key().equals(chosen.key()))) {
            all.add(0, chosen);
        }
        return all.stream()
                .map(stock -> new Choice(stock.key(), stock.words(units)))
                .toList();
    }

    List<Choice> printers() {
        return printers.all().stream()
                .map(printer -> new Choice(printer.id().toString(), printer.name()))
                .toList();
    }
}
