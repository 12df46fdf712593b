package warmshelf.plan.engine;

import warmshelf.words.Sentences;

/** Why a request has no place, and what would help it, sentence by sentence; the words stand in the room's file. */
interface NoPlaceSentences {
    NoPlaceSentences SAY = Sentences.of(NoPlaceSentences.class);

    String noMatWarmEnough(String band);

    String darkMatsOnly(String band);

    String noLightAfterwards();

    String circuitFull();

    String matsTaken(String from, String to);

    String windowOver(String last);

    String tooFewLitPlaces();

    String outlastsPlan(String last);

    String matsOutOfService();

    String notFoundYet();

    String cameLater();

    String takenOut(String by);

    String startLater(String start, String days);

    String startEarlier(String start, String days);

    String smaller(String smaller, String container, String start);

    String otherWarmth(String degrees, String band, String start);

    String otherWarmthSlower(String degrees, String band, String start, String days);

    String lightOtherwise();

    String waitingList();

    String planAnew();
}
