package warmshelf.placing;

import warmshelf.testing.TestDatabase;

class MoveStorePostgresTest extends MoveStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
