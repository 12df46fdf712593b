package warmshelf.group;

import warmshelf.testing.TestDatabase;

class LinkStorePostgresTest extends LinkStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
