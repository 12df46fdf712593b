package warmshelf.allocation;

import warmshelf.testing.TestDatabase;

class LookAndSavePostgresTest extends LookAndSaveContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
