package warmshelf.placing;

import java.time.LocalDate;
import warmshelf.words.Sentences;

/** What is said when a request or a stay cannot be decided on; the words stand in the room's file. */
interface PlacingSentences {
    PlacingSentences SAY = Sentences.of(PlacingSentences.class);

    String stayEnded();

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

    String placeUnfit();

    String placeNoMat();

    String firstDayPassed(LocalDate day, LocalDate today);

    String firstDayTooFar(LocalDate day, LocalDate today, LocalDate latest);

    String lastBeforeFirst(LocalDate last, LocalDate first);

    String spanTooLong(LocalDate first, LocalDate last, int most);

    String setPointUnfit(String degrees, String likes);

    String endedOn(String day);

    String placed(String sowing, String mat, String day, String light);

    String refused(String grower);

    String waitsAgain(String sowing, String seed);

    String isSet(String mat, String degrees, String first, String last);

    String isBack(String what, String grower);

    String freedWaitsAgain(String grower);

    String freed(String grower);

    String nothingPlaced();

    String placedAsSuggested(int placed);

    String moved(String what, String grower, String place, String slot, String day);

    String lightAfterwards(String day, String where, String slot);

    String noLightFree(String days);

    String underLight(String where);

    String whereItIs();

    String takenTo(String day, String by);

    String outOfService(String days);

    String cannotBeWarm();

    String tooWarmOn(String day);

    String rackIsHeld();

    String doesNotFit();

    String lightFollows();

    String notThereToMove();

    String firstDayField();

    String partOfPlaceField();

    String setPointField(String unit);

    String lastDayField();

    String weekEarlier();

    String dayEarlier();

    String dayLater();

    String weekLater();

    String matPlaceHolds(String mat, int place, String where, String range);

    String withLight(String place, String light);

    String lightOtherwise();

    String litMatsOnly();

    String pageField();
}
