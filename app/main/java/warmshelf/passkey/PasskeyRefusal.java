package warmshelf.passkey;

import static warmshelf.passkey.PasskeySentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a passkey is not added, or lets nobody in. */
sealed interface PasskeyRefusal extends Message {
    /** Nothing else is said, so that nobody learns whether such a key, or its member, is here. */
    record NotProved() implements PasskeyRefusal {
        @Override
        public String words(Units units) {
            return SAY.notProved();
        }
    }

    record NotAdded() implements PasskeyRefusal {
        @Override
        public String words(Units units) {
            return SAY.notAdded();
        }
    }

    record Enough(int most) implements PasskeyRefusal {
        @Override
        public String words(Units units) {
            return SAY.enough(most);
        }
    }
}
