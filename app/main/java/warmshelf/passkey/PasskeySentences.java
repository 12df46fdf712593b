package warmshelf.passkey;

import warmshelf.words.Sentences;

/** What is said of passkeys; the words stand in the room's file. */
interface PasskeySentences {
    PasskeySentences SAY = Sentences.of(PasskeySentences.class);

    String nameField();

    String passphraseField();

    String passphraseWrong();

    String notProved();

    String notAdded();

    String enough(int most);

    String notOffered();

    String added(String name);

    String ended(String name);
}
