package warmshelf.allocation;

import warmshelf.testing.TestDatabase;

class StayStorePostgresTest extends StayStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
