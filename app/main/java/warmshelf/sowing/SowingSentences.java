package warmshelf.sowing;

import warmshelf.words.Sentences;

/** What is said when a wish for seed cannot be answered so; the words stand in the room's file. */
interface SowingSentences {
    SowingSentences SAY = Sentences.of(SowingSentences.class);

    String needsNoAnswer();

    String tooManyToGive(int seeds, String most);
}
