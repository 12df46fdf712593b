package warmshelf.privacy;

import static warmshelf.privacy.PrivacySentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why somebody is not erased. */
sealed interface PrivacyRefusal extends Message {

    /** They are erased already. */
    record ErasedAlready() implements PrivacyRefusal {
        @Override
        public String words(Units units) {
            return SAY.erasedAlready();
        }
    }
}
