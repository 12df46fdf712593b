package warmshelf.crop;

import warmshelf.words.Sentences;

/** What is said of crops and of their seed; the words stand in the room’s file. */
interface CropSentences {
    CropSentences SAY = Sentences.of(CropSentences.class);

    String burns();

    String burnsMeaning();

    String hotKinds();

    String hotKindsMeaning();

    String poisonous();

    String poisonousMeaning();

    String poisonousParts();

    String poisonousPartsMeaning();

    String sapBurns();

    String sapBurnsMeaning();

    String sensitises();

    String sensitisesMeaning();

    String irritates();

    String irritatesMeaning();

    String harmsPets();

    String harmsPetsMeaning();

    String harmsGrazing();

    String harmsGrazingMeaning();

    String bitterFruit();

    String bitterFruitMeaning();

    String soldTreated();

    String soldTreatedMeaning();

    String hardyCrops();

    String halfHardyCrops();

    String tenderCrops();

    String veryTenderCrops();

    String inCells();

    String inBag();

    String pressedOn();

    String coveredLightly();

    String covered();

    String soakNotSaid();

    String soakNotNeeded();

    String soakOptional();

    String soakHelps();

    String soakLeftOut();

    String coldHelps(String weeks);

    String noTreatment();

    String soak();

    String soakOf(String hours);

    String nickOrSoak(String soak);

    String nick();

    String optionalSoak(String soak);

    String helpfulSoak(String soak);

    String noSoak();

    String hours(String range);

    String upToHours(int hours);

    String hoursOrMore(int hours);

    String weeks(String range);

    String upToWeeks(int weeks);

    String weeksOrMore(int weeks);

    String range(int least, int most);

    String wakesInCool(long hours, String temperature);

    String sleepsAbove(String temperature);

    String fewerAbove(String temperature);

    String comesUpCool(String temperatures);

    String seedlessWant(String temperatures);

    String coolerNights(String range, String unit);

    String headsAfterChill(long days, String temperature);

    String noCool();

    String clusters();

    String fineAsDust();

    String soldAsPellets();

    String soldNicked();

    String splitTheHusk();

    String ownCell();

    String byDayLength();

    String freshSeed();

    String slowToComeUp();

    String littleComesUp();

    String daysFrom(String days, String basis);

    String plantingOut();

    String sowing();

    String averageLastFrost();

    String thatFrost();

    String fromTo(String first, String last);

    String daysBefore(int days, String frost);

    String daysAfter(int days, String frost);

    String trialsOf1954();

    String raisedFromSlips();

    String ofNearRelative(String vegetable, String source);

    String asTradeStates(String by, String source);

    String ofChosenRelative(String crop, String by, String source);

    String lowAuthority();

    String commonPractice();

    String fromMemory();

    String notTimed();

    String daysNotPublished();

    String nothingCameUp();

    String notTested();

    String doesNotComeUp(String crop, String temperature, String comfortable);

    String comesUpUntimed(String crop, String temperature, String comfortable);

    String nothingPublished(String crop, String temperature, String comfortable);

    String nothingSeen();

    String oneSowingSeen();

    String fromSowings(int sowings);

    String fromSowingsOfLot(int sowings);

    String shifted(String from, String difference, String days, String table, String temperature);

    String muchTheSame();

    String laterThan(String days);

    String soonerThan(String days);

    String halfADay();

    String aDay();

    String aDayAndAHalf();

    String days(String days);

    String nameField();

    String howMuchColdField();

    String weeksAtLeastField();

    String weeksAtMostField();

    String daysAfterFrostField();

    String daysAfterFrostAtMostField();

    String lightToComeUpField();

    String speciesField();

    String yearsSeedKeepsField();

    String noteField();

    String sourceField();

    String addressOfSourceField();

    String nightsField(String unit);

    String depthInInchesField();

    String depthInCentimetresField();

    String basis(String basis);

    String daysToHarvestField();

    String daysAtMostField();

    String countedFromField();

    String soakField();

    String ownWordsField();

    String soakHoursLeastField();

    String soakHoursMostField();

    String coldWeeksLeastField();

    String coldWeeksMostField();

    String varietyField();

    String whoSaysSoField();

    String versionField();

    String answerToWarmthField();

    String firstUpField();

    String lastUpField();

    String coolestField(String unit);

    String warmestField(String unit);

    String hardinessWith(String hardiness, String crops);

    String needsLight();

    String wantsDark();

    String comesUpEitherWay();

    String lightNotKnown();

    String asTradeSays();

    String likeRelative();

    String asReference();

    String belowTheLeast(String field, int given, int least);

    String addressUnfit(String given);

    String nameUnfit(String given);

    String nameTaken(String given);

    String cropOvertaken(String member);

    String harvestWithoutFirst(int most);

    String mostBeforeFirst(int most, int first);

    String harvestEmpty(int most);

    String varietyOvertaken();

    String likeUnknown(String given);

    String lastUpUnfit(String given, String first);

    String warmestUnfit(String given, String coolest);

    String cropSaved();

    String cropOvertakenTakeBack();

    String takenBackToReference();

    String takenBack();

    String varietySaved(String variety);

    String temperatureUnfit(String given);

    String noSuchCrop(String given, String crops);
}
