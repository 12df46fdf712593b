package warmshelf.supply;

import warmshelf.words.Sentences;

/** What this room tells people, sentence by sentence; the words stand in the room's file. */
interface SupplySentences {
    SupplySentences SAY = Sentences.of(SupplySentences.class);

    String inCupboard();

    String itemUnknown(String given);

    String onlyCoordinatorsCupboard();

    String noted();

    String thanks();

    String isThere();

    String notThereYet();

    String promiseChanged();

    String offTheListAlready();

    String takenOffTheList();

    String onlyWhoPromised();
}
