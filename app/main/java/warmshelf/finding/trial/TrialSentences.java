package warmshelf.finding.trial;

import warmshelf.words.Sentences;

/** What trials say in words; the words stand in the room's file. */
interface TrialSentences {
    TrialSentences SAY = Sentences.of(TrialSentences.class);

    String method();

    String heat();

    String warmth();

    String soak();

    String tray();

    String bag();

    String mat();

    String room();

    String soaked();

    String dry();

    String outlookExpected(int seeds, long sprouts, long day);

    String outlookSpeed(String days);

    String outlookNoSpeed(int fewest);

    String outlookShare(long expected, long lower);

    String outlookNoShare();

    String outlookNeeded(String days, int speedSeeds, long expected, long lower, int shareSeeds);

    String outlookThreeWays();

    String outlookOneTray();

    String dayOutside(String given, String first, String last);

    String lotEmpty();

    String lotUnknown();

    String lotOfSomebody(String variety, String owner);

    String neverSoakTreated(String variety);

    String neverSoak(String crop);

    String degreesOf(String letter, String degree);

    String degreesUnknown(String letter, String given, String crop, String accepted);

    String degreesAlike(String letter, String given, String other);

    String tooFewSeeds(int given, String has, int needed, int most);

    String noSeedsLeft(String has, int needed);

    String carriedAlready(int number);

    String over(int number, String state);

    String seasonOver(int number, int season);

    String notSown(String crop, String instead);

    String notComingUp(String crop, String celsius);

    String noRoom(String letter, String why);

    String blockNote(int number, String way, String name, String places);

    String blockNoteApart(int number, String way, String name);

    String calledOff();

    String nobodyCarries();

    String notSownYet(String day);

    String notFinished(long day, long last);

    String countsSoFar(String way, int came, int seeds);

    String notCountedYet(String way);

    String rootsSoFar(String way, int roots);

    String nothingCounted();

    String pair(String first, String second);

    String manyComparisons(int pairs);

    String leftOut(int block, String way, String why);

    String withdrawn();

    String otherLot();

    String notCounted();

    String countsFell();

    String moreThanSown();

    String weeksBetween();

    String otherWarmth(String trial, String way, String celsius, String day, String fellow, String fellowCelsius);
}
