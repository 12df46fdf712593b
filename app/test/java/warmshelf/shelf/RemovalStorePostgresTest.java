package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class RemovalStorePostgresTest extends RemovalStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
