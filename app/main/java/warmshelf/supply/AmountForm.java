package warmshelf.supply;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Another amount of something that is promised, as it is typed; volumes in the person's units. */
final class AmountForm {
    private final FormReader reader;
    private final @Nullable Double written;

    private AmountForm(FormReader reader, @Nullable Double written) {
        this.reader = reader;
        this.written = written;
    }

    /** The amount as it stands. */
    static AmountForm showing(Promise promise, Units units) {
        double shown = promise.item().isVolume() ? units.typedVolume(promise.amount()) : promise.amount();
        String text = shown == Math.rint(shown) ? String.valueOf(Math.round(shown)) : String.valueOf(shown);
        return new AmountForm(
                new FormReader(Map.of("amount", List.of(text), "read", List.of(String.valueOf(promise.amount())))),
                null);
    }

    static AmountForm of(Map<String, List<String>> typed, SupplyItem item, Units units) {
        FormReader reader = new FormReader(typed);
        double amount = PromiseForm.amount(reader, item, units);
        return new AmountForm(reader, reader.ok() ? amount : null);
    }

    /** In millilitres or pieces, where what was typed can be used. */
    Optional<Double> written() {
        return Optional.ofNullable(written);
    }

    /** The amount that the form was opened with; 0, which no promise has, where that was not sent. */
    double read() {
        try {
            return Double.parseDouble(reader.text("read"));
        } catch (NumberFormatException notSent) {
            return 0;
        }
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
