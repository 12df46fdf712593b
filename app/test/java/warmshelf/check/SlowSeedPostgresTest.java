package warmshelf.check;

import warmshelf.testing.TestDatabase;

class SlowSeedPostgresTest extends SlowSeedContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
