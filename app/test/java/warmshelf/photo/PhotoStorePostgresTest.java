package warmshelf.photo;

import warmshelf.testing.TestDatabase;

class PhotoStorePostgresTest extends PhotoStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
