package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class EmergenceStorePostgresTest extends EmergenceStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
