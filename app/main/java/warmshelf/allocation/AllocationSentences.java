package warmshelf.allocation;

import warmshelf.words.Sentences;

/** What keeps something from lying somewhere, sentence by sentence; the words stand in the room's file. */
interface AllocationSentences {
    AllocationSentences SAY = Sentences.of(AllocationSentences.class);

    String takenOnMat(int place, String mat, String by, String days);

    String takenUnderLight(int place, String by, String days);

    String retired(String from);

    String outOfService(String mat, String days, String reason);

    String dark(String mat);

    String tooFar(String day);

    String outsideBand(String temperature, String likes);

    String beyondThermostat(String mat, String holds, String temperature);

    String setForOthers(String mat, String temperature, String day, String likes);

    String turnedSince(String mat, String temperature, String day, String wanted);

    String daysStay(String day);

    String rackIsHeld(String rack, String since);

    String rackTakesNothing(String rack, String since);

    String noHeatUnderLight();

    String onlyUnderLight();

    String noSetPoint(String day);

    String notUnderLight();

    String otherKind();

    String noBottomHeat();

    String unbearable(String temperature, String grower, String variety, String day, String likes);

    String takenMeanwhile();

    String noMatInBand(String band);

    String allDark(String band);

    String allHeld(String band);

    String allTaken(String first, String last);

    String tooLateToStart(String latest);

    String wholePlace();

    String leftHalf();

    String rightHalf();

    String quarter(int quarter);

    String lightAndPlace(int place);

    String matAndPlace(String mat, int place);

    String light();

    String mat(String mat);

    String placeOf(String shelf, String surface, int place, String slot);

    String litPlace(String site, String rack, int shelf, int place);

    String shelf(String site, String rack, int shelf);

    String decidedMeanwhile();
}
