package warmshelf.finding.season;

import warmshelf.words.Sentences;

/** What a season's findings say; the words stand in the room's file. */
interface SeasonSentences {
    SeasonSentences SAY = Sentences.of(SeasonSentences.class);

    String nothingSown();

    String sown(String sowings, String members, String seeds);

    String came(int came, int counted, int percent);

    String plants(String plantedOut, int lost);

    String given(String seedlings);

    String givenUp(String sowings, String reasons);

    String givenUpFor(String problem, int sowings);

    String underWay(String sowings);

    String notCounted();

    String fell();

    String moreThanSown();

    String weeksBetween();

    String lossesMore(String loss, String where, int noted, int sowings, int low, int high);

    String noLossesMore(String loss);

    String noLosses(String loss);

    String lossesByChance();

    String dampingOff();

    String manySeedlings();

    String priceKept();

    String energy(String kilowattHours);

    String energyCosts(String kilowattHours, String costs);
}
