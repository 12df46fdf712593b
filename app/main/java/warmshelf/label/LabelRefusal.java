package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why something about labels is not done. */
sealed interface LabelRefusal extends Message {
    /** Whoever asks neither made the labels nor coordinates. */
    record NotYours(String byName) implements LabelRefusal {
        @Override
        public String words(Units units) {
            return SAY.runOfAnother(byName);
        }
    }
}
