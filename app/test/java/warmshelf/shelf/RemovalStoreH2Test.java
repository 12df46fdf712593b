package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class RemovalStoreH2Test extends RemovalStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
