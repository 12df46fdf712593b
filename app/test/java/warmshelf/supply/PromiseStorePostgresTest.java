package warmshelf.supply;

import warmshelf.testing.TestDatabase;

class PromiseStorePostgresTest extends PromiseStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
