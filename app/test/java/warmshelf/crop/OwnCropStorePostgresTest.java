package warmshelf.crop;

import warmshelf.testing.TestDatabase;

class OwnCropStorePostgresTest extends OwnCropStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
