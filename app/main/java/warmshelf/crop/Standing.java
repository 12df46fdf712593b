package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.Arrays;

/** How far a source is to be trusted, as the reference tables mark it. */
public enum Standing {
    PUBLISHED("published", ""),
    LOW_AUTHORITY("low", SAY.lowAuthority()),
    COMMON_PRACTICE("practice", SAY.commonPractice()),
    FROM_MEMORY("memory", SAY.fromMemory());

    private final String code;
    private final String word;

    Standing(String code, String word) {
        this.code = code;
        this.word = word;
    }

    /** As a page marks it; empty for a source that stands behind what it says. */
    public String word() {
        return word;
    }

    /**
     * The standing of that code.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static Standing named(String code) {
        return Arrays.stream(values())
                .filter(each -> each.code.equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no standing of a source has the code '" + code + "'"));
    }
}
