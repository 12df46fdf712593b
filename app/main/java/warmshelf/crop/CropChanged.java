package warmshelf.crop;

import static warmshelf.crop.CropSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/**
 * Somebody wrote of a crop since it was shown.
 *
 * @param by who did
 */
record CropChanged(String by) implements Message {
    @Override
    public String words(Units units) {
        return SAY.cropOvertaken(by);
    }
}
