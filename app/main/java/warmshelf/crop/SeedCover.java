package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.Arrays;
import java.util.List;

/** How a source has seed covered with a view to light, from the least on. */
public enum SeedCover {
    ON_TOP("on-top", SAY.pressedOn()),
    LIGHTLY_COVERED("lightly-covered", SAY.coveredLightly()),
    COVERED("covered", SAY.covered());

    private static final List<SeedCover> IN_ORDER = List.of(values());

    private final String code;
    private final String words;

    SeedCover(String code, String words) {
        this.code = code;
        this.words = words;
    }

    public String words() {
        return words;
    }

    static SeedCover named(String code) {
        return Arrays.stream(values())
                .filter(cover -> cover.code.equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("seed is not covered '" + code + "'"));
    }

    /** Seed that needs light lies on top; where a crop is said to want the dark it is covered; else both will do. */
    static SeedCover leastOf(Crop crop) {
        return crop.light() == SeedLight.DARK ? LIGHTLY_COVERED : ON_TOP;
    }

    static SeedCover mostOf(Crop crop) {
        return crop.light().isNeeded() ? ON_TOP : COVERED;
    }

    /** Its place among all, from 0 for the least cover. */
    public int place() {
        return IN_ORDER.indexOf(this);
    }

    /** The one at a place. */
    public static SeedCover at(int place) {
        return IN_ORDER.get(place);
    }
}
