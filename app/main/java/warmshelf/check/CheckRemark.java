package warmshelf.check;

import static warmshelf.check.CheckSentences.SAY;

import java.time.LocalDate;
import warmshelf.words.DayWords;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** What else to know at a check. Chances are 0 to 1. */
public sealed interface CheckRemark extends Message {

    /** It was to be done by a day that has passed. */
    record WasDue(LocalDate on) implements CheckRemark {
        @Override
        public String words(Units units) {
            return SAY.wasDueOn(DayWords.day(on));
        }
    }

    /** A missed day is shown, not hidden. */
    record NotLookedSince(LocalDate day) implements CheckRemark {
        @Override
        public String words(Units units) {
            return SAY.notLookedSince(DayWords.day(day));
        }
    }

    /** Nothing is up, and nearly all should show since that day from sowing on. */
    record Slower(int nearlyAllByDay) implements CheckRemark {
        @Override
        public String words(Units units) {
            return SAY.slower(nearlyAllByDay);
        }
    }

    /** The same where it is known how likely any more is. */
    record SlowerWithChance(int nearlyAllByDay, double moreToCome) implements CheckRemark {
        @Override
        public String words(Units units) {
            return SAY.slowerWithChance(nearlyAllByDay, percent(moreToCome));
        }
    }

    /** Some is up, and how likely any more is. */
    record MoreMayCome(double moreToCome) implements CheckRemark {
        @Override
        public String words(Units units) {
            return SAY.moreMayCome(percent(moreToCome));
        }
    }

    private static String percent(double chance) {
        long percent = Math.round(100 * chance);
        return percent == 0 ? SAY.noChance() : percent >= 99 ? "99 %" : percent + " %";
    }
}
