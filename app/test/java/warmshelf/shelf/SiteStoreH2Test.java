package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class SiteStoreH2Test extends SiteStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
