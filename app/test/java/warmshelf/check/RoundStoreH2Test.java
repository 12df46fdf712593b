package warmshelf.check;

import warmshelf.testing.TestDatabase;

class RoundStoreH2Test extends RoundStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
