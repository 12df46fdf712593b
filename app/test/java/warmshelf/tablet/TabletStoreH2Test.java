package warmshelf.tablet;

import warmshelf.testing.TestDatabase;

class TabletStoreH2Test extends TabletStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
