package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Whether a sowing that comes back has its seed again. */
public enum SeedAgain implements Message {
    /** It is held for it. */
    HELD {
        @Override
        public String words(Units units) {
            return "";
        }
    },
    /** It had none before either. */
    STILL_WITHOUT {
        @Override
        public String words(Units units) {
            return SAY.stillWithoutSeed();
        }
    },
    /** Others have it by now. */
    GONE_TO_OTHERS {
        @Override
        public String words(Units units) {
            return SAY.seedGone();
        }
    }
}
