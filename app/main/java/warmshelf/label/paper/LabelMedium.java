package warmshelf.label.paper;

import java.util.Arrays;
import java.util.Optional;

/** What labels come as. */
public enum LabelMedium {
    /** A plant stick, whose pointed end goes into the compost and is not printed. */
    STICK("stick"),
    /** A tag with a hole or a loop. */
    TAG("tag"),
    /** Stickers on a roll, one after another. */
    ROLL("roll"),
    /** Stickers, or plain paper to cut, many to a sheet. */
    SHEET("sheet");

    private final String word;

    LabelMedium(String word) {
        this.word = word;
    }

    /** The word that tables and forms keep. */
    public String word() {
        return word;
    }

    /** The medium of that word; empty where none is called so. */
    public static Optional<LabelMedium> withWord(String word) {
        return Arrays.stream(values()).filter(each -> each.word.equals(word)).findFirst();
    }
}
