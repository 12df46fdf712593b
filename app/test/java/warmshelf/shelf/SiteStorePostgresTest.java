package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class SiteStorePostgresTest extends SiteStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
