package warmshelf.frost.files;

import warmshelf.testing.TestDatabase;

class ImportStoreH2Test extends ImportStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
