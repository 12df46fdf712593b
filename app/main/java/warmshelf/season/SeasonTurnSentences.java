package warmshelf.season;

import warmshelf.words.Sentences;

/** What is said when a season is closed or opened; the words stand in the room's file. */
interface SeasonTurnSentences {
    SeasonTurnSentences SAY = Sentences.of(SeasonTurnSentences.class);

    String wasPlantedOut();

    String nothingCame();

    String nobodyKnows();

    String wasNeverSown();

    String goesOn();

    String hardeningOff();

    String underLight();

    String sownAndNoMore();

    String hadAPlace();

    String notSown();

    String outOnField();

    String outOnToCome(String given, String today);

    String chooseSettlement(String thing);

    String seasonField();

    String closedAlready(int season);

    String changedMeanwhile(int season);

    String notClosed(int season);

    String openedAlready(int season);

    String inUse(int season, String sowings);

    String nothingToTakeBack(int season);

    String couldNotSettle(String thing, String why);

    String isGone();

    String closedNow(int season);

    String openAgain(int season);

    String openedNow(int season);

    String renamed(int season);

    String sown(String sowings, String members, String seeds);

    String nothingSown();

    String came(int came, int counted, int percent);

    String plants(String plants);

    String plantsGiven(String seedlings);

    String givenUp(String sowings);

    String notRecordedCount(String sowings);

    String going(String sowings);

    String lastFrost(String day, int season, int chance);
}
