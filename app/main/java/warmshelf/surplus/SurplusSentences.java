package warmshelf.surplus;

import warmshelf.words.Sentences;

/** What is said of seedlings to give away; the words stand in the room's file. */
interface SurplusSentences {
    SurplusSentences SAY = Sentences.of(SurplusSentences.class);

    String tooMany(int plants, String title, int most);

    String takenAlready(int plants, int taken);

    String tooFewFree(int plants, String title, int free);

    String allTaken(String title);

    String notOpen(String title);

    String onHeldRack(String title);

    String ownPlants(String title);

    String takingChanged();

    String onlyGrowerOffers(String grower);

    String offered(String plants, String title);

    String offerEnded(String title);

    String taken(String plants, String title, String grower);

    String handedOver(String plants, String title);

    String notHandedOver(String plants, String title);

    String givenBack(String plants, String title);

    String plantsField();
}
