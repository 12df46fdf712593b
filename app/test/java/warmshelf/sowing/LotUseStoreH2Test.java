package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class LotUseStoreH2Test extends LotUseStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
