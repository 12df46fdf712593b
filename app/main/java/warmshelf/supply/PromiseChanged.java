package warmshelf.supply;

import static warmshelf.supply.SupplySentences.SAY;

import warmshelf.words.Message;
import warmshelf.words.Units;

/** Somebody has made a promise another, or taken it back, since it was shown. */
record PromiseChanged() implements Message {
    @Override
    public String words(Units units) {
        return SAY.promiseChanged();
    }
}
