package warmshelf.db;

import warmshelf.words.Sentences;

/** What columns hold, in plain words; the words stand in the room’s file. */
interface DbSentences {
    DbSentences SAY = Sentences.of(DbSentences.class);

    String key();

    String text();

    String wholeNumber();

    String number();

    String yesOrNo();

    String day();

    String moment();

    String picture();
}
