package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class BoardStoreH2Test extends BoardStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
