package warmshelf.photo;

import warmshelf.testing.TestDatabase;

class PhotoStoreH2Test extends PhotoStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
