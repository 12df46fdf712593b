package warmshelf.seed;

import warmshelf.testing.TestDatabase;

class LotStorePostgresTest extends LotStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
