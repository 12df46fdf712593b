package warmshelf.shelf;

import warmshelf.words.Sentences;

/** Why a site, rack, shelf or mat is not added or changed, sentence by sentence; the words stand in the room's file. */
interface ShelfSentences {
    ShelfSentences SAY = Sentences.of(ShelfSentences.class);

    String siteNameTaken(String name);

    String rackNameTaken(String name);

    String matNameTaken(String name);

    String levelTaken(int level);

    String placesUsed(int places);

    String litPlacesUsed(int places);

    String setPointOutside(String range, String degrees, String day);

    String changedMeanwhile();
}
