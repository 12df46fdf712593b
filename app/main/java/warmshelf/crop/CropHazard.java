package warmshelf.crop;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What of a crop can hurt whoever handles it. Cautions hang on these codes and on nothing that is written of the crop. */
public enum CropHazard {
    BURNS("burns", "Burns skin and eyes", "as the seed and fruit of hot peppers do"),
    POISONOUS("poisonous", "Poisonous", "the plant or a part of it, if it is eaten"),
    IRRITATES("irritates", "Irritates the skin", "its leaves, hairs or sap"),
    TREATED("treated", "Its seed is sold treated", "with a pesticide, often brightly dyed");

    private final String word;
    private final String title;
    private final String meaning;

    CropHazard(String word, String title, String meaning) {
        this.word = word;
        this.title = title;
        this.meaning = meaning;
    }

    /** Its code in tables and forms. */
    public String word() {
        return word;
    }

    public String title() {
        return title;
    }

    /** What is meant, for whoever ticks it. */
    public String meaning() {
        return meaning;
    }

    /**
     * The hazards of codes with spaces between; none for an empty text.
     *
     * @throws IllegalArgumentException for a code that is none of ours
     */
    public static Set<CropHazard> named(String words) {
        Set<CropHazard> found = EnumSet.noneOf(CropHazard.class);
        if (!words.isBlank()) {
            List.of(words.strip().split("\\s+")).forEach(word -> found.add(of(word)));
        }
        return Collections.unmodifiableSet(found);
    }

    /**
     * The hazard of a code.
     *
     * @throws IllegalArgumentException for a code that is none of ours
     */
    static CropHazard of(String word) {
        return Arrays.stream(values())
                .filter(each -> each.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no hazard of a crop has the code '" + word + "'"));
    }

    /** The codes as they are kept, always in one order. */
    public static String words(Set<CropHazard> hazards) {
        return Arrays.stream(values())
                .filter(hazards::contains)
                .map(CropHazard::word)
                .collect(Collectors.joining(" "));
    }
}
