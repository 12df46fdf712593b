package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class GatheredStorePostgresTest extends GatheredStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
