package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;

/** On what terms others may plan on a lot, as it is typed. */
public final class SharingForm {
    static final List<Choice> TERMS =
            List.of(new Choice("ask", SAY.askMe()), new Choice("free", SAY.takeWhatYouNeed()));

    private final FormReader reader;
    private final @Nullable Sharing sharing;

    private SharingForm(FormReader reader, @Nullable Sharing sharing) {
        this.reader = reader;
        this.sharing = sharing;
    }

    /** The terms as they stand. */
    static SharingForm showing(Sharing sharing) {
        int kept = sharing.keptBack();
        return new SharingForm(
                new FormReader(Map.of(
                        "terms",
                        List.of(sharing.withoutAsking() ? "free" : "ask"),
                        "kept",
                        List.of(kept == 0 ? "" : String.valueOf(kept)))),
                null);
    }

    /** The terms as they were typed; nobody has to ask for the group's own seed. */
    static SharingForm of(Map<String, List<String>> typed, Lot lot) {
        FormReader reader = new FormReader(typed);
        Integer left = lot.seedsLeft();
        int kept = reader.optionalWholeNumber("kept", SAY.keptBackField(), 0, left == null ? LotForm.MOST_SEEDS : left)
                .orElse(0);
        boolean free = lot.ownerId() == null
                || reader.choice(
                                "terms",
                                SAY.termsField(),
                                TERMS.stream().map(Choice::value).toList())
                        .equals("free");
        return new SharingForm(reader, reader.ok() ? new Sharing(kept, free) : null);
    }

    /** The terms, where everything typed can be used. */
    Optional<Sharing> sharing() {
        return Optional.ofNullable(sharing);
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
