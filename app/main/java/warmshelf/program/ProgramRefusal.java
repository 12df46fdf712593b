package warmshelf.program;

import static warmshelf.program.ProgramSentences.SAY;

import java.time.LocalDate;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a token is not made, or lets nobody in. */
sealed interface ProgramRefusal extends Message {
    /** Nobody needs so many. */
    record TooManyTokens(int most) implements ProgramRefusal {
        @Override
        public String words(Units units) {
            return SAY.tooManyTokens(most);
        }
    }

    record Revoked() implements ProgramRefusal {
        @Override
        public String words(Units units) {
            return SAY.tokenRevoked();
        }
    }

    record Ended(LocalDate lastDay) implements ProgramRefusal {
        @Override
        public String words(Units units) {
            return SAY.tokenEnded(lastDay.toString());
        }
    }

    record OwnerLeft() implements ProgramRefusal {
        @Override
        public String words(Units units) {
            return SAY.ownerLeft();
        }
    }
}
