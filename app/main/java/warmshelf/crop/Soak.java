package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import java.util.Arrays;
import java.util.Optional;

/** What is said of soaking a crop's seed before it is sown. */
public enum Soak {
    UNKNOWN("", SAY.soakNotSaid()),
    NEEDLESS("needless", SAY.soakNotNeeded()),
    OPTIONAL("optional", SAY.soakOptional()),
    HELPS("helps", SAY.soakHelps()),
    NEVER("never", SAY.soakLeftOut());

    private final String word;
    private final String words;

    Soak(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /** Its code in tables and forms; empty where nothing is known. */
    public String word() {
        return word;
    }

    /** As a form offers it, after 'a soak before sowing'. */
    public String words() {
        return words;
    }

    /** Whether a source speaks for a soak. */
    public boolean spokenFor() {
        return this == OPTIONAL || this == HELPS;
    }

    static Optional<Soak> find(String word) {
        return Arrays.stream(values()).filter(each -> each.word.equals(word)).findFirst();
    }

    /**
     * The answer of that code.
     *
     * @throws IllegalArgumentException when there is none
     */
    static Soak named(String word) {
        return find(word).orElseThrow(() -> new IllegalArgumentException("no code of soaking is '" + word + "'"));
    }
}
