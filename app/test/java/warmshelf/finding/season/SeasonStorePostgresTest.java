package warmshelf.finding.season;

import warmshelf.testing.TestDatabase;

class SeasonStorePostgresTest extends SeasonStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
