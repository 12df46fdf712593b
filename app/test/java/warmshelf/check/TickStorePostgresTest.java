package warmshelf.check;

import warmshelf.testing.TestDatabase;

class TickStorePostgresTest extends TickStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
