package warmshelf.crop;

import java.util.Arrays;

/** What light a crop's seed wants until it is up. */
public enum SeedLight {
    /** It comes up in light only, or far better in it: it lies on the surface. */
    NEEDED("yes"),
    /** It comes up in the dark only, or far better there: it is covered well. */
    DARK("no"),
    INDIFFERENT("indifferent"),
    /** No source says. */
    NOT_KNOWN("");

    private final String word;

    SeedLight(String word) {
        this.word = word;
    }

    /** As the crop table and forms have it. */
    public String word() {
        return word;
    }

    public boolean isNeeded() {
        return this == NEEDED;
    }

    /** The light of that word. */
    public static SeedLight named(String word) {
        return Arrays.stream(values())
                .filter(light -> light.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("light for seed is never '" + word + "'"));
    }
}
