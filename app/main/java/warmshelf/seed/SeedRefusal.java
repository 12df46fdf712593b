package warmshelf.seed;

import static warmshelf.seed.SeedSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why seed is not offered, taken or counted. */
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

    /** Seeds were taken, or somebody wrote something else of the lot, since its figures were shown. */
    record LotChanged() implements SeedRefusal {
        @Override
        public String words(Units units) {
            return SAY.lotChanged();
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
