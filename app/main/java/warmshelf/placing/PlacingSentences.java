package warmshelf.placing;

import warmshelf.words.Sentences;

/** What is said when a request or a stay cannot be decided on; the words stand in the room's file. */
interface PlacingSentences {
    PlacingSentences SAY = Sentences.of(PlacingSentences.class);

    String stayEnded();

    String decidedMeanwhile();

    String decidedByOthers();

    String onlyBeforeSowing();

    String noMoveToTakeBack();

    String entryMade();

    String otherThanShown();

    String movedToMat(String by, String mat, int place, String slot, String day, String ago);

    String movedBackToMat(String by, String mat, int place, String slot, String day, String ago);

    String movedToLight(String by, int place, String slot, String day, String ago);

    String movedBackToLight(String by, int place, String slot, String day, String ago);

    String letLieLonger(String by, String ago);

    String letBeginEarlier(String by, String ago);

    String letBeginLater(String by, String ago);

    String ended(String by, String ago);

    String changedMeanwhile();
}
