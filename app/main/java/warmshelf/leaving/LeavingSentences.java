package warmshelf.leaving;

import warmshelf.words.Sentences;

/** What is said when somebody cannot leave or be taken back; the words stand in the room's file. */
interface LeavingSentences {
    LeavingSentences SAY = Sentences.of(LeavingSentences.class);

    String changedMeanwhile(String member);

    String notUndoable(String member);
}
