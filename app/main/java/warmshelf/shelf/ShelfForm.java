package warmshelf.shelf;

import java.util.List;
import java.util.Map;
import warmshelf.words.FormReader;

/** Reads what was typed of a shelf. */
public final class ShelfForm {
    private ShelfForm() {}

    /** What was typed as a draft; to be used only if the reader is ok afterwards. */
    public static ShelfDraft read(FormReader reader) {
        int fromTop = reader.wholeNumber("fromTop", "Level from the top", 1, 20);
        int litPlaces = reader.optionalWholeNumber("litPlaces", "Places under light", 0, 12)
                .orElse(0);
        int lightWatts = reader.optionalWholeNumber("lightWatts", "Watts of the lights", 0, 5000)
                .orElse(0);
        if (litPlaces > 0 && lightWatts == 0 && reader.ok()) {
            reader.refuse(
                    "lightWatts",
                    "Watts of the lights is 0, but %d places are under light; a number from 1 to 5,000 is accepted."
                            .formatted(litPlaces));
        }
        return new ShelfDraft(fromTop, litPlaces, lightWatts);
    }

    static Map<String, List<String>> typed(Shelf shelf) {
        return Map.of(
                "fromTop", List.of(String.valueOf(shelf.fromTop())),
                "litPlaces", List.of(String.valueOf(shelf.litPlaces().size())),
                "lightWatts", List.of(String.valueOf(shelf.lightWatts())),
                "version", List.of(String.valueOf(shelf.version())));
    }

    static Map<String, List<String>> blank(int fromTop) {
        return Map.of(
                "fromTop", List.of(String.valueOf(fromTop)), "litPlaces", List.of("0"), "lightWatts", List.of("0"));
    }
}
