package warmshelf.seed;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** A lot's figures as its owner corrects them, with the version they were shown at. */
public final class RecountForm {
    private final FormReader reader;
    private final @Nullable Recount recount;
    private final int version;

    private RecountForm(FormReader reader, @Nullable Recount recount, int version) {
        this.reader = reader;
        this.recount = recount;
        this.version = version;
    }

    /** The figures as they stand. */
    public static RecountForm showing(Lot lot, Units units) {
        Integer left = lot.seedsLeft();
        Map<String, List<String>> typed = KeepingForm.typed(lot, units);
        typed.put("seeds", List.of(left == null ? "" : left.toString()));
        typed.put("treated", List.of(lot.treated() ? "yes" : ""));
        typed.put("note", List.of(lot.note()));
        typed.put("version", List.of(String.valueOf(lot.version())));
        return new RecountForm(new FormReader(typed), null, lot.version());
    }

    public static RecountForm of(Map<String, List<String>> typed, Units units) {
        FormReader reader = new FormReader(typed);
        Recount recount = new Recount(
                reader.optionalWholeNumber("seeds", "Seeds left", 0, LotForm.MOST_SEEDS)
                        .orElse(null),
                reader.ticked("treated"),
                reader.optionalText("note", "Note", LotForm.LONGEST_NOTE),
                KeepingForm.source(reader),
                KeepingForm.storage(reader, units));
        int version = reader.wholeNumber("version", "Version", 1, Integer.MAX_VALUE);
        return new RecountForm(reader, reader.ok() ? recount : null, version);
    }

    /** The figures, where everything typed can be used. */
    public Optional<Recount> recount() {
        return Optional.ofNullable(recount);
    }

    public int version() {
        return version;
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
