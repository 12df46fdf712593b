package warmshelf.frost.garden;

import warmshelf.words.Sentences;

/** What members are told of their gardens and thermometers, sentence by sentence; the words stand in the room's file. */
interface GardenSentences {
    GardenSentences SAY = Sentences.of(GardenSentences.class);

    String latitude();

    String longitude();

    String elevation();

    String inUnit(String label, String unit);

    String feet();

    String metres();

    String pointIs(String latitude, String longitude, String height);

    String north(String figure);

    String south(String figure);

    String east(String figure);

    String west(String figure);

    String pointKept();

    String pointCleared();

    String pointOvertaken();

    String pointChangedMeanwhile(String point);

    String notSet();

    String oneGarden();

    String postcodesOf(String start, String country);

    String lastOfSpring(String moved);

    String firstOfAutumn(String moved);

    String springAverageIs(String day);

    String springOneInTenIs(String day);

    String autumnAverageIs(String day);

    String autumnOneInTenIs(String day);

    String daysLater(String days);

    String daysEarlier(String days);

    String correctedGarden(String change, String by, String on, String reason);

    String correctedPostcodes(String start, String change, String by, String on, String reason);

    String countedShift(String spring, String autumn);

    String countedAsItIs();

    String countedSpringAverage(String day);

    String countedSpringOneInTen(String day);

    String countedAutumnAverage(String day);

    String countedAutumnOneInTen(String day);

    String correctionHolds();

    String areaCorrectionHolds(String area);

    String correctionEnded();

    String noCorrectionOfGarden();

    String noCorrectionOfArea();

    String howShift();

    String howDates();

    String later();

    String earlier();

    String daysAndDates();

    String datesAndDays();

    String howNotChosen();

    String daysInSpring();

    String daysInAutumn();

    String bothNought(int most);

    String neitherWay(String days);

    String springAverage();

    String springOneInTen();

    String autumnAverage();

    String autumnOneInTen();

    String noDate();

    String springWrongWay(String oneInTen, String average);

    String autumnWrongWay(String oneInTen, String average);

    String noDay(String label, String text);

    String noCountry();

    String beginning();

    String noBeginning(String text);

    String reason();

    String reasonTooShort(String text, int least, int most);

    String asUsual(String chance);

    String everyOtherYear(int percent);

    String threeYearsInTen(int percent);

    String oneYearInTen(int percent);

    String plants(String hardiness);

    String suchAs(String examples);

    String noChance(String hardiness, String text);

    String chancesKept();

    String mineChoice();

    String groupChoice();

    String mine();

    String theGroups();

    String theName();

    String whoseNotChosen();

    String added();

    String retired(String name);

    String retiredBefore(String name);

    String onlyCoordinatorAdds();

    String onlyCoordinatorRetires();

    String nightsStay(String name);

    String killingFrost();

    String frost();

    String groundMayFreeze();

    String noFrost();

    String nightIs(String degrees, String meaning);

    String noted(String degrees, String meaning, String day);

    String notedOver(String degrees, String meaning, String day, String before);

    String manyNoted(int count);

    String manyNotedOver(int count, int over);

    String takenAway(String day, String degrees);

    String noSuchNight();

    String notNoted(String day);

    String theMorning();

    String theLowest();

    String theLowestIn(String scale);

    String morningToCome(String day, String today);

    String warmForLowest(String degrees);

    String muchColder(String degrees, String difference, String coldest);

    String sureOfOne(String why);

    String sureOfMany(int nights);

    String doubtOfDay(String day, String why);

    String noNights();

    String tooManyLines(int lines, int most);

    String linesUnread(int bad, int lines);

    String lineProblem(int line, String problem);

    String andMore(int more);

    String dayTwice(String day);

    String noLine(String text, String example);

    String noDateOfLine(String text);

    String dayToCome(String day, String today);

    String dayTooEarly(String day, String first);

    String outside(String figure, String scale, String least, String most);

    String noNightYet();

    String nightsOnly(String nights);

    String nightsNoted(String nights);

    String countNights(int count);

    String springWithout(int year);

    String autumnWithout(int year);

    String springLast(int year, String day);

    String autumnFirst(int year, String day);

    String springShares(String half, String oneInTen);

    String autumnShares(String half, String oneInTen);

    String chart(int nights, String first, String last, int frosts, String coldest, String day);
}
