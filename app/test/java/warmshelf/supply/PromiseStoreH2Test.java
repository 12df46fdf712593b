package warmshelf.supply;

import warmshelf.testing.TestDatabase;

class PromiseStoreH2Test extends PromiseStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
