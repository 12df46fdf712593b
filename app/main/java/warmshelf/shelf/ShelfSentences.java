package warmshelf.shelf;

import java.time.LocalDate;
import warmshelf.words.Sentences;

/** Why a site, rack, shelf or mat is not added or changed, sentence by sentence; the words stand in the room's file. */
interface ShelfSentences {
    ShelfSentences SAY = Sentences.of(ShelfSentences.class);

    String movedSince();

    String placedSince();

    String dueToday();

    String outSince(String mat, String days);

    String freedOnMat(String mat, int place);

    String freedUnderLight(String rack, int shelf, int place);

    String retired();

    String matRetired(String mat, String from);

    String liesBeyond(String from);

    String lieBeyond(int trays, String from);

    String retiredFromField();

    String retiredFromUnfit(LocalDate given, LocalDate first, LocalDate last);

    String isRetired(String what, String from);

    String isInUseAgain(String what);

    String trialBrief(String number, String way);

    String siteNameTaken(String name);

    String rackNameTaken(String name);

    String matNameTaken(String name);

    String levelTaken(int level);

    String placesUsed(int places);

    String litPlacesUsed(int places);

    String setPointOutside(String range, String degrees, String day);

    String changedMeanwhile();

    String wattsMissing(int places);

    String highestBelowLowest(String high, String low);

    String usualBeyond(String usual, String range);

    String addSite();

    String changeSite(String site);

    String addRack(String site);

    String changeRack(String rack);

    String addShelf(String rack);

    String changeShelf(int level);

    String addMat(int level);

    String changeMat(String mat);

    String siteAdded(String site);

    String siteChanged(String site);

    String rackAdded(String rack);

    String rackChanged(String rack);

    String shelfAdded(int level, String rack);

    String shelfChanged(int level);

    String matAdded(String mat);

    String matChanged(String mat);

    String siteNow(String site, int order, String amps, int volts);

    String shelfNow(int level, int places, int watts);

    String circuitLoad(int draw, int most, int rated);

    String matOut(String mat, String from, String to, String why);

    String tooMuch();

    String fluorescent();

    String led();

    String otherLamps();

    String hoursADay(int hours);

    String onATimer();

    String byHand();

    String underALamp();

    String inDaylight();

    String noLight();

    String lightNotKnown();

    String shelfOf(String site, String rack, int shelf);

    String litPlaceAt(String where, int place);

    String matPlaceAt(String where, String mat, int place);

    String lightInShort();

    String outTo(String day);

    String out();

    String outOfServiceTo(String day);

    String litPlace(int place);

    String matAndPlace(String mat, int place);

    String placeOf(String shelf, String place);

    String underLight();

    String matPlace(String mat, int place);

    String matIsOut(String mat, String out);

    String matOutTo(String mat, String day);

    String wholePlace();

    String leftHalf();

    String rightHalf();

    String quarter(int quarter);

    String leavesOn(String day);

    String today();

    String degreesAndAbove(long first, String unit);

    String degreesFromTo(long first, long last, String unit);

    String rackNow(String name, int order);

    String matNow(String name, int order, int places, String range, String usual, String watts, String light);

    String shelfField(int fromTop);

    String heatMat();

    String heatMats();

    String aLight();

    String nothingYet();

    String matNameField();

    String walkOrderField();

    String placesField();

    String lowestField();

    String highestField();

    String wattsField();

    String usualField();

    String lightAboveField();

    String rackNameField();

    String levelField();

    String litPlacesField();

    String lightWattsField();

    String lampHoursField();

    String lampKindField();

    String timerField();

    String siteNameField();

    String ampsField();

    String voltsField();

    String noteField();

    String dayField();

    String firstWeekField();

    String weeksField();

    String versionField();

    String racksStand(String racks);

    String trayLies();

    String traysLie(int trays);

    String trayBooked();

    String traysBooked(int trays);

    String wasUsed();

    String isDeleted(String what);

    String theSite(String name);

    String theRack(String name, String shelves, String mats);

    String theShelf(int level, String rack, String mats);

    String theMat(String name);

    String siteField();
}
