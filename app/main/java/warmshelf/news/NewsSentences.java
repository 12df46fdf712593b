package warmshelf.news;

import warmshelf.words.Sentences;

/** What is said of news; the words stand in the room's file. */
interface NewsSentences {
    NewsSentences SAY = Sentences.of(NewsSentences.class);

    String somebody();

    String placed(String title);

    String refused(String title);

    String refusedBecause(String title, String reason);

    String waits(String title);

    String waitsBecause(String title, String reason);

    String noPlace(String title);

    String moved(String title);

    String problem(String title, String problem);

    String message(String title, String by);

    String photos(String title, int photos);

    String seedAsked(String title, String by);

    String seedGiven(String title, String by);

    String seedRefused(String title, String by);

    String seedlings(String title, String by);

    String moreSeedlings(String title, int more);

    String seedlingsTaken(String title, String by);

    String dutyAsked(String site, String by, String day);

    String dutyTaken(String site, String by, String day);

    String allSeen();

    String momentUnfit();
}
