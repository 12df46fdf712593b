package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a reading of a thermometer is not kept. */
public sealed interface ReadingRefusal extends Message {
    /** Its id serves something else already. */
    record IdInUse() implements ReadingRefusal {
        @Override
        public String words(Units units) {
            return SAY.readingIdUsed();
        }
    }
}
