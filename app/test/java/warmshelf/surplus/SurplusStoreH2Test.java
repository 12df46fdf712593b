package warmshelf.surplus;

import warmshelf.testing.TestDatabase;

class SurplusStoreH2Test extends SurplusStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
