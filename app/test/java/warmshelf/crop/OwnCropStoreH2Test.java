package warmshelf.crop;

import warmshelf.testing.TestDatabase;

class OwnCropStoreH2Test extends OwnCropStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
