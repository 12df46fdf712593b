package warmshelf.label;

import static warmshelf.label.LabelSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a code as it was typed cannot be one; {@code code} is what was typed, cut where it is long. */
sealed interface CodeRefusal extends Message {

    /** Nothing was typed. */
    record Empty() implements CodeRefusal {
        @Override
        public String words(Units units) {
            return SAY.codeEmpty();
        }
    }

    /** No code has such a sign. */
    record UnknownSign(String code, char sign) implements CodeRefusal {
        @Override
        public String words(Units units) {
            return SAY.signUnknown(code, sign);
        }
    }

    /** It has more or fewer signs than a code. */
    record WrongLength(String code, int signs) implements CodeRefusal {
        @Override
        public String words(Units units) {
            return SAY.codeLength(code, signs);
        }
    }

    /** Its last sign does not belong to the others. */
    record CannotBe(String code) implements CodeRefusal {
        @Override
        public String words(Units units) {
            return SAY.codeCannotBe(code);
        }
    }
}
