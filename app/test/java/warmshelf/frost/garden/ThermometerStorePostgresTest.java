package warmshelf.frost.garden;

import warmshelf.testing.TestDatabase;

class ThermometerStorePostgresTest extends ThermometerStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
