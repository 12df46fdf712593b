package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import java.util.UUID;
import warmshelf.seed.BalanceWords;
import warmshelf.seed.LotBalance;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why seed is not held or given, or a sowing not withdrawn. */
sealed interface SowingRefusal extends Message {

    /** It was answered, withdrawn or sown before. */
    record NeedsNoAnswer() implements SowingRefusal {
        @Override
        public String words(Units units) {
            return SAY.needsNoAnswer();
        }
    }

    /** Fewer seeds than that are free for the member who wants them. */
    record TooFewSeeds(LotBalance balance, int wanted, UUID member) implements SowingRefusal {
        @Override
        public String words(Units units) {
            return SAY.tooFewSeeds(new BalanceWords(balance).forMember(member), wanted);
        }
    }

    /** So many requests wait to be sent together already. */
    record TooManyGathered(int most) implements SowingRefusal {
        @Override
        public String words(Units units) {
            return SAY.tooManyGathered(most);
        }
    }

    /** What was gathered was sent or taken out meanwhile. */
    record NotGatheredAnyMore() implements SowingRefusal {
        @Override
        public String words(Units units) {
            return SAY.notGatheredAnyMore();
        }
    }

    /** Others gathered of the same lot come first, and leave too few seeds. */
    record GatheredBefore(int before, int wanted, int free) implements SowingRefusal {
        @Override
        public String words(Units units) {
            return SAY.gatheredBefore(before, wanted, free);
        }
    }

    /** It is sown or has ended, so its seed cannot be changed. */
    record SownAlready() implements SowingRefusal {
        @Override
        public String words(Units units) {
            return SAY.sownAlready();
        }
    }

    /** Only what has not been sown can be withdrawn. */
    record NotToWithdraw(String title, SowingStage stage) implements SowingRefusal {
        @Override
        public String words(Units units) {
            return SAY.notToWithdraw(title, stage.title());
        }
    }

    /** It is not withdrawn, or has been for more than a day. */
    record NoWithdrawal(String title) implements SowingRefusal {
        @Override
        public String words(Units units) {
            return SAY.noWithdrawal(title);
        }
    }

    /** Fewer seeds than that can be given. */
    record TooManyToGive(LotBalance balance, int seeds) implements SowingRefusal {
        @Override
        public String words(Units units) {
            return SAY.tooManyToGive(seeds, new BalanceWords(balance).forGiving());
        }
    }

    /** The season that the group works towards is closed, and the next not open yet. */
    record SeasonClosed(int season) implements SowingRefusal {
        @Override
        public String words(Units units) {
            return SAY.seasonClosed(season);
        }
    }

    /** The group works towards another season than the one that was planned for. */
    record SeasonTurned(int planned, int now) implements SowingRefusal {
        @Override
        public String words(Units units) {
            return SAY.seasonTurned(planned, now);
        }
    }
}
