package warmshelf.seed;

import warmshelf.testing.TestDatabase;

class OfferStoreH2Test extends OfferStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
