package warmshelf.frost.garden;

import static warmshelf.frost.garden.GardenSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Somebody set or cleared the point of a garden since it was shown. */
record PointChanged() implements Message {
    @Override
    public String words(Units units) {
        return SAY.pointOvertaken();
    }
}
