package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class GatheredStoreH2Test extends GatheredStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
