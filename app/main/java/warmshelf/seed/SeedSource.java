package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

/** Where a lot's seed came from, which decides what may be expected of it before anybody has tested it. */
public enum SeedSource {
    PACKET("packet", SAY.boughtPacket()),
    SAVED("saved", SAY.savedHere()),
    SWAPPED("swapped", SAY.swapOrGift());

    private final String word;
    private final String words;

    SeedSource(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /** The word the database keeps. */
    public String word() {
        return word;
    }

    /** The words a page shows. */
    public String words() {
        return words;
    }

    /** The source of that word. */
    public static SeedSource named(String word) {
        for (SeedSource source : values()) {
            if (source.word.equals(word)) {
                return source;
            }
        }
        throw new IllegalArgumentException("no source of seed is called '" + word + "'");
    }
}
