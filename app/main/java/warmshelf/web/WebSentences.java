package warmshelf.web;

import warmshelf.words.Sentences;

/** What this room tells people, sentence by sentence; the words stand in the room's file. */
interface WebSentences {
    WebSentences SAY = Sentences.of(WebSentences.class);

    String unreadableRequest();

    String nothingHere();

    String otherKindOfRequest();

    String tooMuchAtOnce();

    String otherKindOfContent();

    String fault(String reference);

    String pleaseSignIn();

    String notAllowed();

    String notFound();

    String notPossibleHere();

    String changedMeanwhile();

    String noLongerOpen();

    String tooLarge();

    String tooManyTries();

    String somethingBroke();

    String didNotWork();

    String forCoordinators();

    String forSiteCoordinators();

    String atAnotherSite();

    String tabletMayOnlyTick();

    String otherSignIn();

    String jsonOnly();

    String signedOut();

    String otherSite();

    String otherHost(String host);

    String waitThenTry(String time);

    String charsetUnknown(String charset);

    String noFiles();

    String formUnreadable();

    String tooManyFiles(int most);

    String filesTooLarge(long megabytes);

    String savedBefore();

    String phoneApp();

    String pretends(String day, long number, String season);

    String notJustNow();

    String recordsOutOfReach();

    String noRoomOnDisk();

    String databaseAway();

    String busy();

    String sentTooSlowly(long seconds);
}
