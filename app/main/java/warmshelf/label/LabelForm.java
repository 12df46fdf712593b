package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.label.LabelPrinterStore.MeasuredPrinter;
import warmshelf.label.paper.LabelStock;
import warmshelf.words.FormReader;

/**
 * How labels are wanted, as typed; what was not said is as it was the last time.
 *
 * @param wish only to be used where the form is all right
 */
record LabelForm(FormReader form, LabelWish wish) {
    private static final int MOST_COPIES = 60;

    /** What the form can choose from. */
    interface Choices {
        Optional<LabelStock> stock(String key);

        Optional<MeasuredPrinter> printer(UUID id);
    }

    static LabelForm of(Map<String, List<String>> typed, LabelWish usual, Choices choices) {
        FormReader form = new FormReader(typed);
        LabelStock stock = usual.stock();
        if (!form.text("stock").isEmpty()) {
            Optional<LabelStock> found = choices.stock(form.text("stock"));
            if (found.isEmpty()) {
                form.refuse("stock", SAY.stockUnknown(form.text("stock")));
            }
            stock = found.orElse(stock);
        }
        boolean same = stock.key().equals(usual.stock().key());
        int start = form.optionalWholeNumber("start", "First label", 1, stock.toAPage())
                .orElse(same ? usual.startAt() : 1);
        boolean said = form.ticked("chosen");
        return new LabelForm(
                form,
                new LabelWish(
                        stock,
                        said ? printer(form, choices) : usual.printer(),
                        start,
                        said ? form.ticked("lines") : usual.cuttingLines()));
    }

    private static @Nullable MeasuredPrinter printer(FormReader form, Choices choices) {
        String typed = form.text("printer");
        if (typed.isEmpty()) {
            return null;
        }
        try {
            Optional<MeasuredPrinter> found = choices.printer(UUID.fromString(typed));
            if (found.isPresent()) {
                return found.get();
            }
        } catch (IllegalArgumentException notAnId) {
            // falls through to the sentence below, which covers both cases
        }
        form.refuse("printer", SAY.printerUnknown());
        return null;
    }

    /** What of a list was ticked, each as often as was typed. */
    List<LabelItem> chosen(List<LabelItem> items, List<String> ticked) {
        Set<String> keys = new TreeSet<>(ticked);
        Optional<Integer> copies = form.optionalWholeNumber("copies", "How many of each", 1, MOST_COPIES);
        return items.stream()
                .filter(item -> keys.contains(item.key()))
                .map(item -> copies.map(item::times).orElse(item))
                .toList();
    }
}
