package warmshelf.frost.files;

import warmshelf.testing.TestDatabase;

class ImportStorePostgresTest extends ImportStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
