package warmshelf.frost.files;

import warmshelf.words.Sentences;

/** What coordinators are told of the files they bring in, sentence by sentence; the words stand in the room's file. */
interface FilesSentences {
    FilesSentences SAY = Sentences.of(FilesSentences.class);

    String stations();

    String stationsAccepted();

    String normals();

    String normalsAccepted();

    String nights();

    String nightsAccepted();

    String postcodes();

    String postcodesAccepted();

    String tellFromFile();

    String reading();

    String ready();

    String fileReady(String file);

    String taken();

    String cancelled();

    String refused();

    String failed();

    String removed();

    String stopped();

    String waitsForTurn();

    String readSoFar(long percent, String size, long lines);

    String allRead(long lines);

    String kilobytes(long count);

    String megabytes(long count);

    String lastOfSpring();

    String firstOfAutumn();

    String seasonsOf(int count, int first, int last);

    String whatItIs();

    String source();

    String stationName();

    String placeName();

    String latitude();

    String longitude();

    String height();

    String monthIn(String month, String degree);

    String noFileChosen();

    String placeMissing(String label);

    String arrived();

    String givenUp();

    String takenNow();

    String removedNow();

    String decidedMeanwhile(String state);

    String decidedMeanwhileBy(String state, String by);

    String stationGone();

    String stationRemoved();

    String placeCounts();

    String emptyFile();

    String unknownFile(String file, String text, String accepted);

    String accepted(String kinds);

    String otherKind(String chosen, String file, String told);

    String fileToRead();

    String fileOf(String kind);

    String theFile();

    String named(String file);

    String webPage(String file, String text);

    String noText(String file);

    String secondFile(String file);

    String fileDamaged(String file);

    String damaged();

    String tooManyInside(String file, int most);

    String unpacksToTooMuch(long most);

    String programStopped();

    String ourFault(String reference);

    String noRowUsed(String rows);

    String rowsProblem(long rows);

    String firstListed(String problem, int kept);

    String lineOfFile(String file, long line, String problem);

    String columns(int found, int wanted);

    String columnsByTab(int found, int wanted);

    String columnMissing(long line, String missing, String needed);

    String springWrongWay();

    String autumnWrongWay();

    String stationTwice(String station);

    String tooManyStations(int most);

    String noCountry(String text);

    String noPostcode(String text, int most);

    String theLatitude();

    String theLongitude();

    String noNormals(long line, String text, String accepted);

    String noCode();

    String elevationInMetres();

    String noFrostDate(String station);

    String anyDay(String station, String dates);

    String wrongWay(String date);

    String noDay(String date, String text);

    String lastAt(long fahrenheit);

    String firstAt(long fahrenheit);

    String atPercent(String date, int percent);

    String tooFewNights(int count, int least);

    String noSeason();

    String noPlace();

    String noHeight();

    String notOnEarth(String latitude, String longitude);
}
