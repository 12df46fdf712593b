package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class MatOutStoreH2Test extends MatOutStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
