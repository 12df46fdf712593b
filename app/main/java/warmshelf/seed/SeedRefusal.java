package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why seed is not offered or taken. */
sealed interface SeedRefusal extends Message {

    /** More than is neither promised nor kept back. */
    record TooManyToOffer(LotBalance balance, int seeds) implements SeedRefusal {
        @Override
        public String words(Units units) {
            return SAY.tooManyToOffer(seeds, new BalanceWords(balance).forOffering());
        }
    }

    /** Fewer are offered by now. */
    record TooFewOffered(int offered, int seeds) implements SeedRefusal {
        @Override
        public String words(Units units) {
            return SAY.tooFewOffered(seeds, offered);
        }
    }

    /** The lot has fewer seeds than that. */
    record TooFewLeft(int left, int seeds) implements SeedRefusal {
        @Override
        public String words(Units units) {
            return SAY.tooFewLeft(left, seeds);
        }
    }
}
