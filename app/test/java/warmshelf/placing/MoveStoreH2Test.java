package warmshelf.placing;

import warmshelf.testing.TestDatabase;

class MoveStoreH2Test extends MoveStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
