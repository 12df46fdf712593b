package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Somebody wrote of a variety since it was shown. */
record VarietyChanged() implements Message {
    @Override
    public String words(Units units) {
        return SAY.varietyOvertaken();
    }
}
