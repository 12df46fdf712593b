package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import warmshelf.words.DayWords;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** What somebody who ticked should know of the sowing's place. */
sealed interface PlaceRemark extends Message {

    /** Another entry decided where it lies. */
    record Stays() implements PlaceRemark {
        @Override
        public String words(Units units) {
            return SAY.placesStay();
        }
    }

    /**
     * Slow seed keeps its place for some days more.
     *
     * @param freeSince since when the place was nobody's; null: it was to be free tomorrow
     * @param to the day after its new last day
     */
    record Kept(@Nullable LocalDate freeSince, LocalDate to) implements PlaceRemark {
        @Override
        public String words(Units units) {
            String before = freeSince == null ? SAY.wasToBeFreeTomorrow() : SAY.wasFreeSince(DayWords.day(freeSince));
            return before + " " + SAY.keepsItTo(DayWords.lastDay(to));
        }
    }

    /**
     * Slow seed loses its place.
     *
     * @param from since when the place is promised; null: from tomorrow on
     * @param why what is in the way
     */
    record Promised(@Nullable LocalDate from, Message why) implements PlaceRemark {
        @Override
        public String words(Units units) {
            return from == null
                    ? SAY.promisedFromTomorrow(why.words(units))
                    : SAY.promisedFrom(DayWords.day(from), why.words(units));
        }
    }
}
