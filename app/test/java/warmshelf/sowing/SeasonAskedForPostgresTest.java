package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class SeasonAskedForPostgresTest extends SeasonAskedForContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
