package warmshelf.placing;

import warmshelf.testing.TestDatabase;

class MoveBackPostgresTest extends MoveBackContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
