package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class MatStoreH2Test extends MatStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
