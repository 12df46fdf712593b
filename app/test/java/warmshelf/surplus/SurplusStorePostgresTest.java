package warmshelf.surplus;

import warmshelf.testing.TestDatabase;

class SurplusStorePostgresTest extends SurplusStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
