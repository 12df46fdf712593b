package warmshelf.finding;

import warmshelf.words.Sentences;

/** What findings say in words; the words stand in the room's file. */
interface FindingSentences {
    FindingSentences SAY = Sentences.of(FindingSentences.class);

    String faster(String first, String second, String days, String low, String high);

    String speedsAlike(String first, String second, String low, String high);

    String speedsUnknown(int fewest);

    String moreCame(String first, String second, String share, String otherShare, String low, String high);

    String sharesAlike(String first, String second, String share, String otherShare);

    String waysDiffer(String chance);

    String waysAlike(String chance);

    String fasterAndFewer(String chance);

    String waysAlikeWithAll(String chance);

    String severalSpeedsAlike();

    String severalChances(String speed, String share);

    String oneWayOnly(String way, String share);

    String oneSeedOnly(String way);

    String nothingSprouted();

    String oneName(String first, String second);

    String weeksBetween();

    String fewSeeds();

    String oneTrayAWay();

    String looksDiffer();

    String bagCountedLate();

    String sownApart();

    String warmthDiffered();

    String notPlanned();
}
