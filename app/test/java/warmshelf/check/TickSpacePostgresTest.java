package warmshelf.check;

import warmshelf.testing.TestDatabase;

class TickSpacePostgresTest extends TickSpaceContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
