package warmshelf.demo;

import warmshelf.words.Sentences;

/** What the demo prints, and what its people write; the words stand in the room’s file. */
interface DemoSentences {
    DemoSentences SAY = Sentences.of(DemoSentences.class);

    String demoIsAt(String address);

    String passphraseIs(String passphrase);

    String member();

    String coordinator();

    String onDutyAt(String site);

    String tooHotForMats(String crop);

    String watered();

    String stillDamp();

    String wipedLid();

    String turned();

    String looksWell();

    String aired();

    String cornerOpen();

    String miscounted();

    String stoodApart();

    String dryAtEdges();

    String tippedWater();

    String newLabel();

    String fluffTaken();

    String seedTooOld();

    String fellOver();
}
