package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class RackStorePostgresTest extends RackStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
