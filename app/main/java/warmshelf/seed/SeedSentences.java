package warmshelf.seed;

import warmshelf.words.Sentences;

/** What is said when seed cannot be offered or taken; the words stand in the room's file. */
interface SeedSentences {
    SeedSentences SAY = Sentences.of(SeedSentences.class);

    String tooManyToOffer(int seeds, String most);

    String tooFewOffered(int seeds, int offered);

    String tooFewLeft(int left, int seeds);
}
