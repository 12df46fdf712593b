package warmshelf.check;

import warmshelf.testing.TestDatabase;

class BatchStorePostgresTest extends BatchStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
