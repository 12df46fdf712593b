package warmshelf.privacy;

import warmshelf.testing.TestDatabase;

class ErasurePostgresTest extends ErasureContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.postgres();
    }
}
