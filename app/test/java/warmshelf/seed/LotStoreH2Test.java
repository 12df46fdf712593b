package warmshelf.seed;

import warmshelf.testing.TestDatabase;

class LotStoreH2Test extends LotStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
