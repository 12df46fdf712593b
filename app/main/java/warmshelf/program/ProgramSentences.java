package warmshelf.program;

import warmshelf.words.Sentences;

/** What people are told of tokens, and scripts of what they asked and sent; the words stand in the room’s file. */
interface ProgramSentences {
    ProgramSentences SAY = Sentences.of(ProgramSentences.class);

    String readRound();

    String writeRound();

    String writeReadings();

    String writeNights();

    String readSowings();

    String readStays();

    String readLots();

    String readMetrics();

    String forCoordinators();

    String nameField();

    String nothingTicked();

    String endsOnField();

    String endsOnPast(String given, String today);

    String tooManyTokens(int most);

    String noSuchToken();

    String revokedNow(String name);

    String tokenMissing();

    String tokenMalformed();

    String tokenUnknown();

    String tokenRevoked();

    String tokenEnded(String day);

    String ownerLeft();

    String tokenInAddress();

    String scopeMissing(String scope);

    String jsonOnly();

    String keyMissing();

    String keyUsed();

    String keyUnderWay();

    String notAnObject();

    String fieldUnknown(String field, String accepted);

    String otherType(String field, String given, String accepted);

    String aNumber();

    String aText();

    String trueOrFalse();

    String anObject();

    String noList(String field, int most);

    String listTooLong(String field, int size, int most);

    String celsiusMissing();

    String sentAtUnfit();

    String noSuchMat();

    String noSuchThermometer();

    String thermometerRetired(String name);

    String nightTwice(String day);

    String nightDoubtful(String doubt);

    String parameterUnknown(String name, String accepted);

    String nothingToAsk(String name);

    String parameterTwice(String name);

    String afterUnfit();
}
