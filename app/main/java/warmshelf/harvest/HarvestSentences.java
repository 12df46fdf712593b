package warmshelf.harvest;

import warmshelf.words.Sentences;

/** What is said of harvests; the words stand in the room's file. */
interface HarvestSentences {
    HarvestSentences SAY = Sentences.of(HarvestSentences.class);

    String again(int again, int of);

    String gave(int gave, int of);

    String tasted(int tasted, int of);

    String weighed(String kilograms);

    String trouble(String words);

    String kept();

    String nothingPlantedOut();
}
