package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class BoardStorePostgresTest extends BoardStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
