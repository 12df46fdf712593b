package warmshelf.sowing;

import static warmshelf.sowing.SowingSentences.SAY;

import warmshelf.seed.BalanceWords;
import warmshelf.seed.LotBalance;
import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a wish for seed of somebody's lot cannot be answered so. */
sealed interface SowingRefusal extends Message {

    /** It was answered, withdrawn or sown before. */
    record NeedsNoAnswer() implements SowingRefusal {
        @Override
        public String words(Units units) {
            return SAY.needsNoAnswer();
        }
    }

    /** Fewer seeds than that can be given. */
    record TooManyToGive(LotBalance balance, int seeds) implements SowingRefusal {
        @Override
        public String words(Units units) {
            return SAY.tooManyToGive(seeds, new BalanceWords(balance).forGiving());
        }
    }
}
