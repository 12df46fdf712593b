package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class RetirementStoreH2Test extends RetirementStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
