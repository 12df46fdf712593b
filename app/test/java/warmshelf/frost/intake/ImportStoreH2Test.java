package warmshelf.frost.intake;

import warmshelf.testing.TestDatabase;

class ImportStoreH2Test extends ImportStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
