package warmshelf.plan;

import warmshelf.words.Sentences;

/** Why something of a season plan is not done, sentence by sentence; the words stand in the room's file. */
interface PlanSentences {
    PlanSentences SAY = Sentences.of(PlanSentences.class);

    String begunOrChanged(String what);

    String doesNotWait(String what);

    String decidedMeanwhile(String what);

    String inTheWay(String what, String why);

    String matGone(String mat);

    String placeGone(int place, String mat);

    String lightGone(int place, String shelf);

    String anotherRuns();

    String doesNotRun(String state);

    String planChanged();

    String editNotKept(String what);

    String nothingToUndo();

    String notYoursToPutFirst();

    String changedSince();
}
