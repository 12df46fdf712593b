package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class ShelvingStoreH2Test extends ShelvingStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
