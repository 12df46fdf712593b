package warmshelf.leaving;

import static warmshelf.leaving.LeavingSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why somebody does not leave, or is not taken back. */
sealed interface LeavingRefusal extends Message {

    /** Something that the member leaves came or went since it was decided. */
    record ChangedMeanwhile(String member) implements LeavingRefusal {
        @Override
        public String words(Units units) {
            return SAY.changedMeanwhile(member);
        }
    }

    /** The leaving is too old, or taken back already, or there is none. */
    record NotUndoable(String member) implements LeavingRefusal {
        @Override
        public String words(Units units) {
            return SAY.notUndoable(member);
        }
    }
}
