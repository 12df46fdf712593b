package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class RackStoreH2Test extends RackStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
