package warmshelf.privacy;

import warmshelf.testing.TestDatabase;

class ErasureH2Test extends ErasureContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.h2();
    }
}
