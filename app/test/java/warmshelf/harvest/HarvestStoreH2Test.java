package warmshelf.harvest;

import warmshelf.testing.TestDatabase;

class HarvestStoreH2Test extends HarvestStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
