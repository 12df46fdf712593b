package warmshelf.privacy;

import warmshelf.words.Sentences;

/** What this room tells people, sentence by sentence; the words stand in the room's file. */
interface PrivacySentences {
    PrivacySentences SAY = Sentences.of(PrivacySentences.class);

    String formerMember(int number);

    String somebody();

    String erasedAlready();

    String confirmationField();

    String notConfirmed(String member);

    String chooseSuccessor();

    String youAreErased();

    String personErased();

    String stillHere(String member);

    String readme();

    String aboutYou();

    String aboutGarden();

    String aboutSowings();

    String aboutSeen();

    String aboutSeed();

    String aboutDuty();

    String aboutTold();

    String aboutSigningIn();

    String aboutDone();

    String aboutChanges();

    String you();

    String somebodyElse();

    String yes();

    String no();

    String requestsGo(int count);

    String turnsGo(int count);

    String promisesGo(int count);

    String notesGo(int count);

    String messagesGo(int count);

    String devicesGo(int count);

    String calendarsGo(int count);

    String gardenGoes(int count);

    String wishesGo(int count);

    String signInsGo(int count);

    String sowingsStay(int count);

    String traysStay(int count);

    String entriesStay(int count);

    String lotsStay(int count);

    String workStays(int count);

    String changesStay(int count);
}
