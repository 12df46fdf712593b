package warmshelf.timeline;

import java.time.LocalDate;
import warmshelf.words.Sentences;

/** What is said of a sowing’s season; the words stand in the room's file. */
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

    String inMostYears();

    String inThreeToFiveYears();

    String inOneToThreeYears();

    String killingFrost();

    String coldThatEndsGrowth();

    String harvestExpected(String first, String half);

    String halfBefore(String half, String ending);

    String harvestBefore(String day, String ending, String years);

    String firstAndHalfBefore(String first, String ending, String years, String half, String yearsOfHalf);

    String inTimeIn(String day, String years);

    String inNearlyEveryYear();

    String inHardlyAnyYear();

    String inYearsOfTen(int years);

    String heatBar();

    String onTheHeat();

    String roomBar();

    String inTheRoom();

    String lightBar();

    String underTheLight();

    String hardeningBar();

    String hardeningOff();

    String outBar();

    String outdoors();

    String fromSpringOn();

    String forAutumn();

    String overWinter();

    String noFrostFromSowing();

    String noFrostFromToday();

    String tooFineForBag(String crop);

    String rootsBreakInBag(String crop);

    String needsNoMat(String crop, String temperature);

    String daysNotTested(String temperature);

    String upSooner(String days, String plantingOut);

    String roomTemperature(String temperature);

    String noFrostAtRisk(String place);

    String frostAfter(String day, long springs, String place);

    String riskNotKnown(String day);

    String frostAfterByEvidence(String day, long springs, String place);

    String whereIsNeeded();

    String firstFrostNeedsLast();

    String lastFrostOfOtherYear(LocalDate day, String season);

    String firstFrostUnfit(LocalDate first, LocalDate last);

    String noSuchPostcode(String postcode);

    String noSuchPostcodeButNear(String postcode, String near);

    String noSuchCrop(String crop, String near);

    String methodUnfit(String given);

    String partUnfit(String given, String crop, String accepted);
}
