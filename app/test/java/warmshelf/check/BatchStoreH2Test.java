package warmshelf.check;

import warmshelf.testing.TestDatabase;

class BatchStoreH2Test extends BatchStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
