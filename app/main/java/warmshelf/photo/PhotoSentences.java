package warmshelf.photo;

import warmshelf.words.Sentences;

/** What this room tells people, sentence by sentence; the words stand in the room's file. */
interface PhotoSentences {
    PhotoSentences SAY = Sentences.of(PhotoSentences.class);

    String idInUse();

    String enoughOfEntry(int most);

    String enoughOfPacket(int most);

    String noSuchEntry();

    String missing();

    String tooLarge(long megabytes, int most);

    String unreadable();

    String tooManyPixels(int width, int height, long millions);

    String tooManyScans();

    String othersFirst();

    String tooRich();

    String notAPhoto();

    String keptWithEntry();

    String keptWithLot();

    String takenOut();

    String mayNotAddToLot();

    String mayNotTakeOut();

    String mayNotTakeOutOfLot();
}
