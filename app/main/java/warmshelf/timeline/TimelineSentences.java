package warmshelf.timeline;

import warmshelf.words.Sentences;

/** What is said of a season's ends; the words stand in the room's file. */
interface TimelineSentences {
    TimelineSentences SAY = Sentences.of(TimelineSentences.class);

    String neverFrostFree();

    String stayUnderCover();

    String tooShort(String days);

    String tooShortWithDaysLeft(String days, long left, String plantingOut);

    String chooseQuick();

    String chooseQuickOf(String days);

    String onlyQuickest(String days, String harvest);

    String usualKinds(String first);

    String usualSowingEnded(String ended, String last);

    String lastSowingWas(String last);

    String buyPlants(String ended, String out, String harvest);

    String boughtTooLate(String ended);

    String rootsInTime();

    String wouldNotRoot(String ended);

    String notRipe(String harvest);

    String outTooLate(String out);

    String sowAgain(String days, String until);

    String standsUntil(String day);

    String bolts(String days, String nights);

    String biennial();

    String perennial();

    String lives(String kind);

    String gatheredThenFlowers(String kind, String year);

    String flowersInYear(String kind, String year);

    String firstHarvestInYear(String kind, String year);

    String firstYear();

    String secondYear();

    String thirdYear();
}
