package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class ShelfStoreH2Test extends ShelfStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
