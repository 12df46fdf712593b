package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class ShelvingStorePostgresTest extends ShelvingStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
