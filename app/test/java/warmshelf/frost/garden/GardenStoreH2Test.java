package warmshelf.frost.garden;

import warmshelf.testing.TestDatabase;

class GardenStoreH2Test extends GardenStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
