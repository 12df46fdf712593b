package warmshelf.frost.minima;

import warmshelf.words.Sentences;

/** What daily minima tell, and what is wrong with a file of them, sentence by sentence; the words stand in the room's file. */
interface MinimaSentences {
    MinimaSentences SAY = Sentences.of(MinimaSentences.class);

    String springs();

    String autumns();

    String frostIs(String celsius);

    String northernByWarmth();

    String southernByWarmth();

    String autumnNextYear();

    String notOneTells(String seasons);

    String noneHadFrost(int count, String seasons);

    String fewHadFrost(int count, String seasons, String days);

    String tooFewHadFrost(int count, String seasons);

    String leftOut(int count, String seasons);

    String yearsWithout(String years);

    String andMoreYears(String years, int more);

    String doubted(int count);

    String lastOfSpring();

    String firstOfAutumn();

    String cameLater(int first, int last, String frost, String days);

    String cameEarlier(int first, int last, String frost, String days);

    String cameSteadily(int first, int last, String frost);

    String withinChance(String moved);

    String moved(String moved);

    String nowLater(String moved, int year, String days);

    String nowEarlier(String moved, int year, String days);

    String plainLayout();

    String ghcnCsvLayout();

    String ghcnDlyLayout();

    String fileOfMinima();

    String noFile(String file);

    String unreadable(String file, String fault);

    String lineTooLong(int most, String kind);

    String notMinima(String file, int line, String text, String layouts);

    String webPage(String file, int line, String text);

    String noText(String file);

    String noMinimum(String file);

    String refused(String file, String problems);

    String restNotRead();

    String lineProblem(int line, String problem);

    String columns(int found, int wanted, String text);

    String columnsOfLayout(int found, int wanted, String text);

    String noStart(String text);

    String endsBefore(int day, String month);

    String noDate(String text);

    String noDateWithYear(String text);

    String noDateInDigits(String text);

    String noSuchDay(String day, int first, int last);

    String noNumber(String text);

    String noTenths(String text);

    String tenths(String text);

    String noNightOnEarth(String text, int coldest, int warmest);

    String dayTwice(String day);

    String otherStation(String station, String before);
}
