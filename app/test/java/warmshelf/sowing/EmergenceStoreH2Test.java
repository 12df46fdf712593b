package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class EmergenceStoreH2Test extends EmergenceStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
