package warmshelf.group;

import warmshelf.testing.TestDatabase;

class SiteCoordinatorStorePostgresTest extends SiteCoordinatorStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
