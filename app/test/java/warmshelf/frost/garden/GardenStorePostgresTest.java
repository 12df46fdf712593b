package warmshelf.frost.garden;

import warmshelf.testing.TestDatabase;

class GardenStorePostgresTest extends GardenStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
