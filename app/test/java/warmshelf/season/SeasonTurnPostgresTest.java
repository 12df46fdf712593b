package warmshelf.season;

import warmshelf.testing.TestDatabase;

class SeasonTurnPostgresTest extends SeasonTurnContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.postgres();
    }
}
