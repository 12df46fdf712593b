package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

/**
 * The way of a side-by-side trial that a stay is of, for boards.
 *
 * @param words for example 'trial 3 way B'
 */
public record TrialOnBoard(int number, String way, String words) {
    /** The same where there is little room: 'trial 3 B'. */
    String brief() {
        return SAY.trialBrief(String.valueOf(number), way);
    }

    /** The same where there is hardly any room: '3 B'. */
    String briefest() {
        return number + " " + way;
    }
}
