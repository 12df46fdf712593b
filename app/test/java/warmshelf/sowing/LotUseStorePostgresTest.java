package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class LotUseStorePostgresTest extends LotUseStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
