package warmshelf.duty;

import static warmshelf.duty.DutySentences.SAY;

import java.time.LocalDate;
import warmshelf.words.DayWords;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a swap cannot be asked for, taken, declined or withdrawn; {@code what} is the turn in words. */
sealed interface SwapRefusal extends Message {

    /** The day to be given is over. */
    record DayPast(LocalDate day) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.dayPast(DayWords.day(day));
        }
    }

    /** Somebody else is on duty on the day to be given. */
    record NotYourDay(LocalDate day) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.notYourDay(DayWords.day(day));
        }
    }

    /** Others are asked to take the day already. */
    record AskedAlready(LocalDate day) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.askedAlready(DayWords.day(day));
        }
    }

    /** The one who asks was named as the one who is asked. */
    record AskedOneself() implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.askedOneself();
        }
    }

    /** The day in exchange is over. */
    record ReturnPast(LocalDate day) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.returnPast(DayWords.day(day));
        }
    }

    /** Nobody, or the asker, is on duty on the day in exchange. */
    record ReturnOfNobodyElse(LocalDate day) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.returnOfNobodyElse(DayWords.day(day));
        }
    }

    /** The day in exchange is not one of the member who is asked. */
    record ReturnNotTheirs(LocalDate day) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.returnNotTheirs(DayWords.day(day));
        }
    }

    /** Somebody has taken it. */
    record TakenBy(String taker, String what) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.takenBy(taker, what);
        }
    }

    /** Whoever asked does not ask any more. */
    record Withdrawn(String asker, String what) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.withdrawn(asker, what);
        }
    }

    /** The one who was asked has said no. */
    record DeclinedAlready(String what) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.declinedAlready(what);
        }
    }

    /** Somebody else was given the day. */
    record RotaChanged(String what) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.rotaChanged(what);
        }
    }

    /** Its day is over. */
    record Past(String what) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.past(what);
        }
    }

    /** It is the taker's own day. */
    record YourOwnDay(String what) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.yourOwnDay(what);
        }
    }

    /** Another member is asked, and nobody else. */
    record OnlyOneAsked(String member, String what) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.onlyOneAsked(member, what);
        }
    }

    /** One of the two days has gone to somebody else. */
    record CannotBeSwapped(String what) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.cannotBeSwapped(what);
        }
    }

    /** The taker is on duty elsewhere that day. */
    record YouLookElsewhere(LocalDate day) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.youLookElsewhere(DayWords.day(day));
        }
    }

    /** The asker is on duty elsewhere on the day in exchange. */
    record AskerLooksElsewhere(String asker, LocalDate day) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.askerLooksElsewhere(asker, DayWords.day(day));
        }
    }

    /** The member who says no is not asked, or not any more. */
    record NotAsked(String what) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.notAsked(what);
        }
    }

    /** Only the asker can withdraw. */
    record NotYours(String asker) implements SwapRefusal {
        @Override
        public String words(Units units) {
            return SAY.notYours(asker);
        }
    }
}
