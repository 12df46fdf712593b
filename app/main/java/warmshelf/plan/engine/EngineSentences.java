package warmshelf.plan.engine;

import warmshelf.words.Sentences;

/** Why a request has no place, what would help it, and what is wrong with a plan; the words stand in the room's file. */
interface EngineSentences {
    EngineSentences SAY = Sentences.of(EngineSentences.class);

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

    String theRequest(String id);

    String theFixedStay(String id);

    String noSetPoint();

    String noSuchMat(String mat);

    String beyondThermostat(String mat, String degrees);

    String twoSetPoints(String mat, String day);

    String outsideBand(String who, String degrees, String day);

    String notInFile(String who, String mat);

    String noSuchPlace(String who, String place, String mat, String places);

    String otherSize(String who, String quarters, String asked);

    String outsideWindow(String who, String day);

    String beyondPlan(String who, String from, String to);

    String darkMat(String who, String mat);

    String matOut(String who, String mat, String day);

    String notItsTime(String who, String days, String degrees);

    String noSuchLitPlace(String who);

    String noLightAfter(String who);

    String otherLight(String who);

    String bothLie(String first, String second, String quarter, String place, String surface, String day);

    String circuitOverloaded(String circuit, String watts, String day);

    String notAsked(String request);

    String answeredTwice(String who);

    String notAnswered(String who);
}
