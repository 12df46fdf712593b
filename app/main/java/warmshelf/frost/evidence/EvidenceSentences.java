package warmshelf.frost.evidence;

import warmshelf.words.Sentences;

/** What kinds of evidence are called, and where a garden lies; the words stand in the room's file. */
interface EvidenceSentences {
    EvidenceSentences SAY = Sentences.of(EvidenceSentences.class);

    String publishedDates();

    String nightsOfStation();

    String twelveMeans();

    String nightsOfThermometer();

    String atOwnPoint(String place);
}
