package warmshelf.tablet;

import warmshelf.words.Sentences;

/** What is said of tablets at the racks; the words stand in the room's file. */
interface TabletSentences {
    TabletSentences SAY = Sentences.of(TabletSentences.class);

    String author(String name);

    String nameField();

    String siteField();

    String nameTaken(String name);

    String siteGone();

    String noSites();

    String endedBefore(String name);

    String endedNow(String name);

    String otherSite();

    String opened(String name);
}
