package warmshelf.tablet;

import warmshelf.testing.TestDatabase;

class TabletStorePostgresTest extends TabletStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
