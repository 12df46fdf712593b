package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class ShelfStorePostgresTest extends ShelfStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
