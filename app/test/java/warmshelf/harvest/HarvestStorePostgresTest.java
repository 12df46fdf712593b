package warmshelf.harvest;

import warmshelf.testing.TestDatabase;

class HarvestStorePostgresTest extends HarvestStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
