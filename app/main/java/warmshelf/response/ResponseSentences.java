package warmshelf.response;

import warmshelf.words.Sentences;

/** What a crop's page says of the ends of its season; the words stand in the room's file. */
interface ResponseSentences {
    ResponseSentences SAY = Sentences.of(ResponseSentences.class);

    String bears();

    String noFrost();

    String bearsDownTo(String coldest);

    String bearsDownToOr(String coldest, String other);

    String bolts();

    String boltsAfter(String days, String nights);

    String quickestKinds();

    String autumn();

    String sownForAutumn();

    String winter();

    String beforeFirstFrost(String weeks);

    String again();

    String every(String days);

    String years();

    String noneInLists();

    String notLookedUp();

    String depthUsual();

    String onTheSurface();

    String needsLight(String depth);

    String wantsDark(String depth);

    String daysAt(String days, String temperature);

    String publishedDays(String table);

    String publishedDaysAndDots(String table, int sowings);

    String foundAtFirstLook(String days, String by);

    String foundBetween(String days, String after, String by);

    String reprintsGiveDays(String temperature, String days, int used);

    String onePrintSays(String temperature, String each, String used);

    String nothingCameUp();

    String cameUpWithoutDays(int percent);

    String dot(String days, String temperature);

    String dotFromBag(String days, String temperature);

    String notKnown();

    String cold();

    String plantingOut();

    String nights();

    String weeksIndoors();

    String depth();

    String beforeSowing();

    String canHurt();

    String firstHarvest();

    String seedKeeps();

    String above(String temperature);

    String keepsYears(int years);

    String fromTo(int least, int most);

    String printedDays(int days);

    String notTested();

    String or();

    String another();

    String orLess(String figure);

    String orMore(String figure);

    String light();

    String range(String low, String high);

    String either(String low, String high);

    String noneRead();

    String oneAgrees();

    String oneSaysOtherwise();

    String allAllow(long services);

    String allAllowSomeMore(long services);

    String someLeaveOut(long services, long others);

    String nothingKnown();

    String daysToRoots(String days);

    String daysToSeedlings(String days);

    String daysFromTo(int least, String most);
}
