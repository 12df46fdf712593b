package warmshelf.check;

import warmshelf.testing.TestDatabase;

class RoundStorePostgresTest extends RoundStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
