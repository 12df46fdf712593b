package warmshelf.handbook;

import warmshelf.words.Sentences;

/** The chapters of the handbook, each with what it tells; the words stand in the room’s file. */
interface HandbookSentences {
    HandbookSentences SAY = Sentences.of(HandbookSentences.class);

    String firstEvening();

    String firstEveningAbout();

    String phones();

    String phonesAbout();

    String mail();

    String mailAbout();

    String notices();

    String noticesAbout();

    String backup();

    String backupAbout();

    String moving();

    String movingAbout();

    String servers();

    String serversAbout();

    String security();

    String securityAbout();

    String options();

    String optionsAbout();

    String frost();

    String frostAbout();

    String tour();

    String tourAbout();

    String commands();

    String commandsAbout();

    String programs();

    String programsAbout();

    String limits();

    String limitsAbout();

    String data();

    String dataAbout();

    String noSuchChapter();
}
