package warmshelf.crop;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** A figure of a crop that may rest on common practice alone, and is marked so beside it. */
public enum CropFigure {
    DEPTH,
    NIGHT;

    /**
     * The figures of a row of codes with spaces between.
     *
     * @throws IllegalArgumentException for a code that is none of ours
     */
    static Set<CropFigure> named(String words) {
        Set<CropFigure> found = EnumSet.noneOf(CropFigure.class);
        if (!words.isBlank()) {
            Arrays.stream(words.strip().split("\\s+"))
                    .forEach(word -> found.add(valueOf(word.toUpperCase(Locale.ROOT))));
        }
        return Set.copyOf(found);
    }
}
