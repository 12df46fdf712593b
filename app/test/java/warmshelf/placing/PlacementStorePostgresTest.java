package warmshelf.placing;

import warmshelf.testing.TestDatabase;

class PlacementStorePostgresTest extends PlacementStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
