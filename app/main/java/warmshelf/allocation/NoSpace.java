package warmshelf.allocation;

import static warmshelf.allocation.AllocationSentences.SAY;

import java.time.LocalDate;
import warmshelf.words.DayWords;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** The true reason why a request finds no space. */
public sealed interface NoSpace extends Message {
    /** No mat can hold a temperature that suits the crop. */
    record NoMatInBand(Band band) implements NoSpace {
        @Override
        public String words(Units units) {
            return SAY.noMatInBand(band.words(units));
        }
    }

    /** Its seed comes up in light only, and every mat that can be warm enough lies in the dark. */
    record AllDark(Band band) implements NoSpace {
        @Override
        public String words(Units units) {
            return SAY.allDark(band.words(units));
        }
    }

    /** Every mat that would do is on a rack that is held. */
    record AllHeld(Band band) implements NoSpace {
        @Override
        public String words(Units units) {
            return SAY.allHeld(band.words(units));
        }
    }

    /** Every fitting mat is taken, out of service, or set to what does not suit, from the first to the last sensible start. */
    record Full(LocalDate first, LocalDate last) implements NoSpace {
        @Override
        public String words(Units units) {
            return SAY.allTaken(DayWords.day(first), DayWords.day(last));
        }
    }

    /** The last sensible start has passed. */
    record TooLate(LocalDate latest) implements NoSpace {
        @Override
        public String words(Units units) {
            return SAY.tooLateToStart(DayWords.day(latest));
        }
    }
}
