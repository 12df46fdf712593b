package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class SowingResultPostgresTest extends SowingResultContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
