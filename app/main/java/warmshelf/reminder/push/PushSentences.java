package warmshelf.reminder.push;

import warmshelf.words.Sentences;

/** Why a device’s push address is not taken, and why one has ended; the words stand in the room’s file. */
interface PushSentences {
    PushSentences SAY = Sentences.of(PushSentences.class);

    String unfit(String trouble);

    String empty();

    String tooLong(int characters, int most);

    String noAddress();

    String notHttps();

    String noServer();

    String notPublic();

    String otherPort(String port, String used);

    String hasFragment();

    String youStoppedIt();

    String youWereSignedOut();

    String takesNoMore();

    String hasEnded();
}
