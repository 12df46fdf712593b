package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import org.jspecify.annotations.Nullable;

/**
 * What a board marks on a tray for whoever reads it.
 *
 * @param due whether something is to do at it today
 * @param change what others did to it since the reader last looked; null: nothing
 */
public record StayMark(boolean due, @Nullable Change change) {
    public static final StayMark NONE = new StayMark(false, null);

    /** What somebody does to a stay. */
    public enum Change {
        PLACED,
        MOVED
    }

    /** As short as a tray needs it, with a space after each sign; the key of the board says what they mean. */
    public String signs() {
        return (change == null ? "" : "◆ ") + (due ? "! " : "");
    }

    /** In full, with a comma before each; empty where nothing is marked. */
    public String words() {
        String changed = change == null ? "" : ", " + (change == Change.MOVED ? SAY.movedSince() : SAY.placedSince());
        return changed + (due ? ", " + SAY.dueToday() : "");
    }
}
