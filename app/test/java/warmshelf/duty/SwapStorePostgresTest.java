package warmshelf.duty;

import warmshelf.testing.TestDatabase;

class SwapStorePostgresTest extends SwapStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
