package warmshelf.group;

import warmshelf.testing.TestDatabase;

class SiteCoordinatorStoreH2Test extends SiteCoordinatorStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
