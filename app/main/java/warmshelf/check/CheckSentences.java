package warmshelf.check;

import warmshelf.words.Sentences;

/** What the round tells people, sentence by sentence; the words stand in the room's file. */
interface CheckSentences {
    CheckSentences SAY = Sentences.of(CheckSentences.class);

    String noSuchSowing();

    String sameLook();

    String keptBefore();

    String idOfAnotherSowing();

    String notOfThisSowing();

    String hasEnded(String sowing, String stage);

    String correctedAlready();

    String movedOn(String step);

    String notSownYet(String sowing);

    String cannotFollow(String sowing, String stage, String step);

    String fewerSprouted(int now, int before);

    String moreMovedThanSprouted(int moved, int sprouted);

    String fewerMoved(int now, int before);

    String placesStay();

    String wasToBeFreeTomorrow();

    String wasFreeSince(String day);

    String keepsItTo(String day);

    String promisedFromTomorrow(String why);

    String promisedFrom(String day, String why);

    String readingIdUsed();

    String rackIsHeld(String rack, String since);

    String rackIsTold();
}
