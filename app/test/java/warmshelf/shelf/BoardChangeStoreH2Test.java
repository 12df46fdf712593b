package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class BoardChangeStoreH2Test extends BoardChangeStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
