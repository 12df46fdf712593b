package warmshelf.duty;

import warmshelf.testing.TestDatabase;

class SwapStoreH2Test extends SwapStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
