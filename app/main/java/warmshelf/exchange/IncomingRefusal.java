package warmshelf.exchange;

import static warmshelf.exchange.ExchangeSentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Why a file that was looked at is not taken in. */
sealed interface IncomingRefusal extends Message {

    /** Somebody changed what its rows were judged by. */
    record ChangedMeanwhile() implements IncomingRefusal {
        @Override
        public String words(Units units) {
            return SAY.changedMeanwhile();
        }
    }
}
