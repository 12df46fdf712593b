package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** What light reaches what lies on a mat from above. */
public enum LightAbove {
    LAMP("lamp", SAY.underALamp()),
    DAYLIGHT("daylight", SAY.inDaylight()),
    NONE("none", SAY.noLight()),
    /** Nobody has said: nothing is refused for that. */
    NOT_KNOWN("", SAY.lightNotKnown());

    private final String word;
    private final String words;

    LightAbove(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /** As forms and tables have it; empty where nobody has said. */
    public String word() {
        return word;
    }

    /** As a table keeps it: null where nobody has said. */
    @Nullable
    String kept() {
        return this == NOT_KNOWN ? null : word;
    }

    /** For example 'under a lamp'. */
    public String words() {
        return words;
    }

    /** Whether light is known to reach it. */
    public boolean isLit() {
        return this == LAMP || this == DAYLIGHT;
    }

    /** Whether seed that needs light would lie in the dark there, as far as anybody knows. */
    public boolean isDark() {
        return this == NONE;
    }

    /** The light of that word; not known for none. */
    public static LightAbove named(@Nullable String word) {
        String known = word == null ? "" : word;
        return Arrays.stream(values())
                .filter(light -> light.word.equals(known))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no light is called '" + known + "'"));
    }
}
