package warmshelf.supply;

import static warmshelf.supply.SupplySentences.SAY;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** 'I bring so much of this', as it is typed; volumes in the person's units. */
final class PromiseForm {
    static final List<Choice> ITEMS = Arrays.stream(SupplyItem.values())
            .map(item -> new Choice(item.word(), item.words()))
            .toList();
    static final List<Choice> WHOSE =
            List.of(new Choice("mine", SAY.iBringIt()), new Choice("cupboard", SAY.inCupboard()));
    private static final int LONGEST_NOTE = 200;
    private static final int MOST_PIECES = 10_000;
    private static final int MOST_ML = 2_000_000;
    private static final int LEAST_ML = 10;

    private final FormReader reader;
    private final @Nullable NewPromise written;

    private PromiseForm(FormReader reader, @Nullable NewPromise written) {
        this.reader = reader;
        this.written = written;
    }

    static PromiseForm blank(String item) {
        return new PromiseForm(new FormReader(Map.of("item", List.of(item), "whose", List.of("mine"))), null);
    }

    static PromiseForm of(Map<String, List<String>> typed, boolean coordinator, Units units) {
        FormReader reader = new FormReader(typed);
        Optional<SupplyItem> item = SupplyItem.named(reader.text("item"));
        if (item.isEmpty()) {
            reader.refuse(
                    "item",
                    SAY.itemUnknown(reader.text("item")
                            .substring(0, Math.min(40, reader.text("item").length()))));
        }
        double amount = item.map(what -> amount(reader, what, units)).orElse(0.0);
        boolean there = reader.text("whose").equals("cupboard");
        if (there && !coordinator) {
            reader.refuse("whose", SAY.onlyCoordinatorsCupboard());
        }
        String note = reader.optionalText("note", "Note", LONGEST_NOTE);
        return new PromiseForm(reader, reader.ok() ? new NewPromise(item.orElseThrow(), amount, there, note) : null);
    }

    /** Millilitres or pieces; a stand-in with a problem where what was typed cannot be used. */
    static double amount(FormReader reader, SupplyItem item, Units units) {
        if (!item.isVolume()) {
            return reader.wholeNumber("amount", SAY.howMany(), 1, MOST_PIECES);
        }
        double least = units.typedVolume(LEAST_ML);
        double most = units.typedVolume(MOST_ML);
        return units.millilitresOf(reader.decimal("amount", SAY.howMuch(units.volumeWord()), least, most));
    }

    Optional<NewPromise> written() {
        return Optional.ofNullable(written);
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
