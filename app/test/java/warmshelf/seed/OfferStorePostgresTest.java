package warmshelf.seed;

import warmshelf.testing.TestDatabase;

class OfferStorePostgresTest extends OfferStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
