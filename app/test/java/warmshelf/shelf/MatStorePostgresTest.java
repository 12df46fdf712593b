package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class MatStorePostgresTest extends MatStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
