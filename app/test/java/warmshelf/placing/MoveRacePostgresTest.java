package warmshelf.placing;

import warmshelf.testing.TestDatabase;

class MoveRacePostgresTest extends MoveRaceContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
