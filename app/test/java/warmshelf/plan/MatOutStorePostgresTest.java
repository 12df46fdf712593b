package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class MatOutStorePostgresTest extends MatOutStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
