package warmshelf.leaving;

import warmshelf.words.Sentences;

/** What is said when somebody cannot leave or be taken back; the words stand in the room's file. */
interface LeavingSentences {
    LeavingSentences SAY = Sentences.of(LeavingSentences.class);

    String changedMeanwhile(String member);

    String notUndoable(String member);

    String chooseFate(String thing);

    String chooseReceiver();

    String hasLeft(String member);

    String leftNow(String member);

    String underWay();

    String notSownYet();

    String daysOnDuty();

    String handedOver();

    String staysTheirs();

    String isWithdrawn();

    String standsEmpty();

    String goesToGroup();

    String takenAlong();

    String isBack(String member, int things);

    String othersChanged(int things);

    String seed();

    String lotNotCounted(String crop, String variety, String year);

    String lotCounted(String crop, String variety, String year, String seeds);
}
