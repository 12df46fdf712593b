package warmshelf.allocation;

import warmshelf.testing.TestDatabase;

class StayRacePostgresTest extends StayRaceContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
