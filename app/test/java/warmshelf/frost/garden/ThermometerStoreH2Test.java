package warmshelf.frost.garden;

import warmshelf.testing.TestDatabase;

class ThermometerStoreH2Test extends ThermometerStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
