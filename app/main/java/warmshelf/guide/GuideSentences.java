package warmshelf.guide;

import warmshelf.words.Sentences;

/** What the how-to pages say of figures, sources and crops; the words stand in the room’s file. */
interface GuideSentences {
    GuideSentences SAY = Sentences.of(GuideSentences.class);

    String disagree(String how);

    String noSecondSource();

    String sourcesAgree();

    String sourcesRange(String low, String high, String unit);

    String allAllow(String figure);

    String allAllowRange(String low, String high);

    String upTo(String figure);

    String about(String figure);

    String moreThan(String figure);

    String orMore(String figure);

    String hours();

    String hoursADay();

    String micromolesASecond();

    String molesADay();

    String nitrogen();

    String wattsASquareFoot();

    String wattsASquareMetre();

    String peroxide();

    String timesThickness();

    String timesWidth();

    String holdsInOunces(String cell, String tray);

    String holdsInLitres(String cell, String tray);

    String cells(String cells);

    String comfortable();

    String depth();

    String light();

    String mat();

    String bag();

    String beforeSowing();

    String indoors();

    String nightsToGoOut();

    String bears();

    String flowersEarly();

    String noMat(String temperature);

    String noBagTooFine();

    String noBagRootsStay();

    String halfIsUp(String comfortable, long days, String temperature);

    String onTheSurface();

    String orOnTheSurface(String depth);

    String commonPractice(String figure);

    String needsLight();

    String keepDark();

    String eitherWay();

    String beforePlantingOut(String weeks);

    String above(String temperature);

    String flowersAfter(String days, String temperature);

    String noSuchArticle();

    String noSuchCrop(String crop);
}
