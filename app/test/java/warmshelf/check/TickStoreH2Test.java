package warmshelf.check;

import warmshelf.testing.TestDatabase;

class TickStoreH2Test extends TickStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
