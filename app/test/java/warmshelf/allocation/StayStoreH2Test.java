package warmshelf.allocation;

import warmshelf.testing.TestDatabase;

class StayStoreH2Test extends StayStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
