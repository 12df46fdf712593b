package warmshelf.shelf;

import warmshelf.words.Sentences;

/** Why a site, rack, shelf or mat is not added or changed, sentence by sentence; the words stand in the room's file. */
interface ShelfSentences {
    ShelfSentences SAY = Sentences.of(ShelfSentences.class);

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
}
