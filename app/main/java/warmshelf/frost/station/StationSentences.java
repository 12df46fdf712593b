package warmshelf.frost.station;

import warmshelf.words.Sentences;

/** What is wrong with a file of stations, sentence by sentence; the words stand in the room's file. */
interface StationSentences {
    StationSentences SAY = Sentences.of(StationSentences.class);

    String noFile(String file);

    String notCsv(String file, String fault);

    String columnsMissing(String file, String missing, String needed);

    String monthsMissing(String file);

    String lineProblem(long line, String problem);

    String refused(String file, String problems);

    String noDates(String file);

    String columnsOff(int count);

    String noDay(String column, String text);

    String cellOfLine(long line, String column);
}
