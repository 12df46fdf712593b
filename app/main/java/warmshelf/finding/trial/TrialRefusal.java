package warmshelf.finding.trial;

import static warmshelf.finding.trial.TrialSentences.SAY;

import java.util.UUID;
import warmshelf.seed.BalanceWords;
import warmshelf.seed.LotBalance;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a trial is not declared, or a block not joined. */
sealed interface TrialRefusal extends Message {
    /** Fewer seeds are free by now. */
    record NoSeedsLeft(LotBalance balance, int needed, UUID member) implements TrialRefusal {
        @Override
        public String words(Units units) {
            return SAY.noSeedsLeft(new BalanceWords(balance).forMember(member), needed);
        }
    }

    /** Whoever joins carries a block already. */
    record CarriedAlready(int number) implements TrialRefusal {
        @Override
        public String words(Units units) {
            return SAY.carriedAlready(number);
        }
    }

    /** What came of it is known: whoever joins now would choose by that. */
    record Over(int number, TrialState state) implements TrialRefusal {
        @Override
        public String words(Units units) {
            return SAY.over(number, state.title());
        }
    }

    /** The group works towards another season by now. */
    record SeasonOver(int number, int season) implements TrialRefusal {
        @Override
        public String words(Units units) {
            return SAY.seasonOver(number, season);
        }
    }
}
