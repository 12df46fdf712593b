package warmshelf.plan;

import java.time.LocalDate;
import warmshelf.words.Sentences;

/** Why something of a season plan is not done, sentence by sentence; the words stand in the room's file. */
interface PlanSentences {
    PlanSentences SAY = Sentences.of(PlanSentences.class);

    String begunOrChanged(String what);

    String doesNotWait(String what);

    String decidedMeanwhile(String what);

    String inTheWay(String what, String why);

    String matGone(String mat);

    String placeGone(int place, String mat);

    String lightGone(int place, String shelf);

    String anotherRuns();

    String doesNotRun(String state);

    String planChanged();

    String editNotKept(String what);

    String nothingToUndo();

    String notYoursToPutFirst();

    String changedSince();

    String onlyLastUndone();

    String nothingWaits();

    String notProposed(String state);

    String noPlaceInPlan(String sowing);

    String placeNotToBeHad();

    String matOut(String mat, String days, int stays);

    String trialNotAsShown();

    String matUnknown();

    String placeUnknown();

    String firstDayUnfit(LocalDate given, LocalDate earliest, LocalDate latest);

    String lastDayUnfit(LocalDate given, LocalDate earliest, LocalDate latest);

    String setPointUnfit(String degrees, String likes);

    String stayUnknown();

    String nothingPublished();

    String runBegun();

    String stops();

    String firstChoiceNow();

    String freedPlaceTaken(String sowing, String mat, String day, String light);

    String placesOffered();

    String outWithNothing();

    String backInService();

    String staysWithoutLight();

    String staysOtherLight();

    String keepsPlace();

    String keepsMatLosesLight();

    String keepsMatOtherLight();

    String getsPlace();

    String losesPlace();

    String underTheLight(String shelf, int place, String slot, String days);

    String noPlaceYet(String sowing);

    String takenBackLies(String sowing, String where);

    String takenBackWaits(String sowing);

    String workedOn();

    String lostInMidRun();

    String publishedAndUndone();

    String noWarmMat(String band);

    String noWarmMatHelp();

    String allOut();

    String allOutHelp();

    String allClosed();

    String allClosedHelp();

    String setOtherwise(int place, String mat, String why);

    String setOtherwiseHelp();

    String noRoomForItsDays(String size, String days);

    String noRoomForDays(String size, int length, String days);

    String noRoomHelp();

    String quarterOfAPlace();

    String freeForTheRest(int place, String mat, String day);

    String couldBegin(String day, String days, String mat, int place);

    String published(int placed, int waiting);

    String undone(int restored, int waiting);

    String undoneWaits(int waiting);

    String begunStays(String what);

    String matsAsBefore();

    String matsAsBeforeExcept(String mats);

    String placedAllThatCan(int placed, int requests);

    String placedOfAtMost(int placed, int requests, int most);

    String doesNotHoldTogether(String why);

    String outWithStays(int stays);

    String yourLies(String sowing, String mat, String days, int place, String slot);

    String thenItGoes(String light);

    String wasMoved(String day, String where);

    String firstDayField();

    String lastDayField();

    String reasonField();

    String partOfPlaceField();

    String matPlaceHolds(String mat, int place, String where, String range);

    String versionField();

    String startingNumberField();

    String secondsField();

    String wholePlace();

    String halfAPlace();

    String takenOut(String sowing);

    String allMoved(int moved);

    String someMoved(int moved, int left);

    String onMat(String mat, int place, String slot, String days);

    String placeOnMat(String mat, int place, String slot);

    String placeUnderLight(String shelf, int place, String slot);

    String thenLight(String mat, String light);

    String moves();
}
