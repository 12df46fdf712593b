package warmshelf.leaving;

import static warmshelf.leaving.LeavingSentences.SAY;

import java.util.Arrays;
import java.util.Optional;

/** What becomes of a thing that a member leaves. */
enum Fate {
    HANDED_OVER("handed-over", SAY.handedOver()),
    KEPT("kept", SAY.staysTheirs()),
    WITHDRAWN("withdrawn", SAY.isWithdrawn()),
    EMPTIED("emptied", SAY.standsEmpty()),
    TO_GROUP("to-group", SAY.goesToGroup()),
    TAKEN_ALONG("taken-along", SAY.takenAlong());

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
