package warmshelf.leaving;

import warmshelf.testing.TestDatabase;

class LeavingPostgresTest extends LeavingContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.postgres();
    }
}
