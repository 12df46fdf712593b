package warmshelf.finding.prediction;

import warmshelf.words.Sentences;

/** What the page on predictions says; the words stand in the room's file. */
interface PredictionSentences {
    PredictionSentences SAY = Sentences.of(PredictionSentences.class);

    String emergenceHeld(int chance, int held, int of, String range);

    String noEmergence();

    String slowerHere(String times);

    String fasterHere(String times);

    String asPublished(String times);

    String fewToJudge(int fewest);

    String fits();

    String heldLess();

    String heldMore();

    String noPlants();

    String plantsSummed(String sowings, int told, int seen);

    String plantsHeld(int chance, int held, int of, String range);

    String plantsWanted(int chance, int had, int of, String range);

    String plantsLeftOut(String sowings);

    String cropPlants(String sowings, int told, int seen);

    String moreThanChance();

    String withinChance();

    String noPlantingOut();

    String plantingOutWithin(int within, int of, String range);

    String plantingOutLater(String days, String low, String high);

    String plantingOutFew(int fewest);

    String cropPlantingOut(String sowings, int within, String days);

    String daysLater(String days);

    String daysEarlier(String days);

    String onTheDay();

    String noFrost();

    String springRisk(int chance, int came, int of, String range);

    String autumnRisk(int chance, int came, int of, String range);

    String frostMore();

    String frostLess();

    String springSeasons();

    String autumnSeasons();

    String frostShared();
}
