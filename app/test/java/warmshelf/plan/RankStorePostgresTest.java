package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class RankStorePostgresTest extends RankStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
