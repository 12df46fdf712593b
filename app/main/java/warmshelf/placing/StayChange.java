package warmshelf.placing;

import static warmshelf.placing.PlacingSentences.SAY;

import java.time.Duration;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Slot;
import warmshelf.words.DayWords;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** What somebody did to a stay since it was looked at. */
sealed interface StayChange extends Message {

    /**
     * It was moved.
     *
     * @param back whether a move was taken back
     * @param mat its name; null under a light
     * @param ago how long it is since then
     */
    record Moved(String by, boolean back, @Nullable String mat, int place, Slot slot, LocalDate from, Duration ago)
            implements StayChange {
        @Override
        public String words(Units units) {
            String day = DayWords.date(from);
            String since = DayWords.ago(ago);
            if (mat == null) {
                return back
                        ? SAY.movedBackToLight(by, place, slot.words(), day, since)
                        : SAY.movedToLight(by, place, slot.words(), day, since);
            }
            return back
                    ? SAY.movedBackToMat(by, mat, place, slot.words(), day, since)
                    : SAY.movedToMat(by, mat, place, slot.words(), day, since);
        }
    }

    /** Its days changed, or it ended. */
    record Changed(String by, Kind kind, Duration ago) implements StayChange {
        @Override
        public String words(Units units) {
            String since = DayWords.ago(ago);
            return switch (kind) {
                case LIES_LONGER -> SAY.letLieLonger(by, since);
                case BEGINS_EARLIER -> SAY.letBeginEarlier(by, since);
                case BEGINS_LATER -> SAY.letBeginLater(by, since);
                case ENDED -> SAY.ended(by, since);
            };
        }
    }

    /** Nobody knows what. */
    record Unknown() implements StayChange {
        @Override
        public String words(Units units) {
            return SAY.changedMeanwhile();
        }
    }

    /** What was done to its days. */
    enum Kind {
        LIES_LONGER,
        BEGINS_EARLIER,
        BEGINS_LATER,
        ENDED
    }
}
