package warmshelf.frost;

import warmshelf.words.Sentences;

/** What the frost page and the frost commands tell, sentence by sentence; the words stand in the room's file. */
interface FrostSentences {
    FrostSentences SAY = Sentences.of(FrostSentences.class);

    String lightFrost();

    String lightFrostMeans();

    String frost();

    String frostMeans();

    String killingFrost();

    String killingFrostMeans();

    String evenChance();

    String inTen(int count);

    String oneSpringInTen(String day);

    String noSpringInTen();

    String oneAutumnInTen(String day);

    String noAutumnInTen();

    String knownDates();

    String howSure(String days);

    String aDay();

    String springChart();

    String autumnChart();

    String percentAfter(int percent, String day);

    String percentBefore(int percent, String day);

    String hardlyAnyChance();

    String bundledGrid();

    String bundledGridIs();

    String membersThermometer();

    String kindAndSource(String kind, String source);

    String asItIs();

    String daysLater(String days);

    String daysEarlier(String days);

    String noChange();

    String heightOfPlace();

    String heightGiveOrTake(String height, String spread);

    String gridPoints();

    String gridPoint(String latitude, String longitude, String weight);

    String heightOfGrid();

    String nearestStation();

    String away(String distance);

    String changeUpward(String height);

    String movedForHeight();

    String shareWithFrost();

    String scatterOfYears();

    String scatterOfPlaces();

    String scatterOfHeight();

    String scatterOfAll();

    String spread(String days);

    String frostPocket();

    String shelter();

    String yearsAndShelter();

    String averageElevation(String height);

    String stationsLower(String height);

    String stationsHigher(String height);

    String stationFar(String distance);

    String frostRare(String percent);

    String measuredInUnitedStates();

    String someOnMonths(String error);

    String errorInUnitedStates();

    String errorElsewhere();

    String guessedElevation(String height);

    String weightiestFar(String distance);

    String weightiestLower(String height);

    String weightiestHigher(String height);

    String stationsMoved();

    String yearsWithFrostOnly();

    String monthsAlone(String error);

    String meansDecide();

    String autumnInNextYear();

    String bothUnits(String metric, String american);

    String postcode();

    String country();

    String nothingKnown(String latitude, String longitude);

    String stationsTellOfOthers(String nothingKnown);

    String noPostcode(String code);

    String noPostcodeAbroad(String code, String country);

    String noPostcodeSimilar(String code, String similar);

    String noPostcodeDigits(String code);

    String postcodesOfUsOnly(String country);

    String theLatitude();

    String theLongitude();

    String theElevation();

    String degrees();

    String metres();

    String outside(String what, String given, int least, int most, String unit);

    String formatWithoutMinima();

    String monthlyGoesWithAt();

    String monthsCounted(int count);

    String meanOfMonthly();

    String noStation();

    String minimaAlone();

    String unknownFormat(String format);

    String postcodeAndPoint();

    String noPlace();

    String seasonOutside(int year, int first, int last);

    String notAPoint(String text);

    String latitudeOfAt();

    String longitudeOfAt();

    String elevationOfAt();

    String tooFewStations(String file, int count, int least);

    String noFolderForOut(String file);
}
