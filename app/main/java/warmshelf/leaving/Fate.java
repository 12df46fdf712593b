package warmshelf.leaving;

import java.util.Arrays;
import java.util.Optional;

/** What becomes of a thing that a member leaves. */
enum Fate {
    HANDED_OVER("handed-over", "Goes to whoever takes over"),
    KEPT("kept", "Stays in their name"),
    WITHDRAWN("withdrawn", "Is withdrawn, its place given up"),
    EMPTIED("emptied", "Stands empty for now"),
    TO_GROUP("to-group", "Goes to the group"),
    TAKEN_ALONG("taken-along", "They take it along");

    private final String word;
    private final String title;

    Fate(String word, String title) {
        this.word = word;
        this.title = title;
    }

    /** The word the database keeps and forms send. */
    public String word() {
        return word;
    }

    /** The words a page shows. */
    public String title() {
        return title;
    }

    static Optional<Fate> named(String word) {
        return Arrays.stream(values()).filter(fate -> fate.word.equals(word)).findFirst();
    }
}
