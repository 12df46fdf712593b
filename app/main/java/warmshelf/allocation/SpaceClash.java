package warmshelf.allocation;

import java.util.function.Function;
import warmshelf.words.Units;

/** Space or temperature forbids a placement; the message is a sentence for the person who tried. */
public final class SpaceClash extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Function<Units, String> words;

    public SpaceClash(String sentence) {
        this(units -> sentence);
    }

    /** @param words the sentence in a reader's units */
    public SpaceClash(Function<Units, String> words) {
        super(words.apply(Units.METRIC));
        this.words = words;
    }

    /** The sentence in a reader's units. */
    public String sentence(Units units) {
        return words.apply(units);
    }
}
