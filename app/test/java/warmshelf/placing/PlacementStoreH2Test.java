package warmshelf.placing;

import warmshelf.testing.TestDatabase;

class PlacementStoreH2Test extends PlacementStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
