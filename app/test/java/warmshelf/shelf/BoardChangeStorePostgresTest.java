package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class BoardChangeStorePostgresTest extends BoardChangeStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
