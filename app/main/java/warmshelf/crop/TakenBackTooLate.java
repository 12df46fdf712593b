package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Somebody wrote of a crop since it was shown to whoever takes back what was written. */
record TakenBackTooLate() implements Message {
    @Override
    public String words(Units units) {
        return SAY.cropOvertakenTakeBack();
    }
}
