package warmshelf.shelf;

import warmshelf.testing.TestDatabase;

class RetirementStorePostgresTest extends RetirementStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
