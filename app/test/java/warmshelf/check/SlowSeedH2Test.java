package warmshelf.check;

import warmshelf.testing.TestDatabase;

class SlowSeedH2Test extends SlowSeedContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
