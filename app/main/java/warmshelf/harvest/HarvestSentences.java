package warmshelf.harvest;

import java.time.LocalDate;
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

    String firstHarvestField(String variety);

    String lastHarvestField(String variety);

    String kilogramsField(String variety);

    String againField(String variety);

    String amountField(String variety);

    String tasteField(String variety);

    String troubleField(String variety);

    String lastBeforeFirst(String variety, LocalDate last, LocalDate first);

    String dayUnfit(String field, LocalDate day, LocalDate plantedOut, LocalDate today);
}
