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

    String sowingCompost();

    String sowingCompostReckoned();

    String covering();

    String coveringReckoned();

    String pottingCompost();

    String pottingCompostReckoned();

    String cellTrays();

    String cellTraysReckoned();

    String rottingPots();

    String rottingPotsReckoned();

    String pots();

    String potsReckoned();

    String bags();

    String bagsReckoned();

    String labels();

    String labelsReckoned();

    String peroxide();

    String peroxideReckoned();

    String iBringIt();

    String howMany();

    String howMuch(String measure);
}
