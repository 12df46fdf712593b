package warmshelf.sowing;

import warmshelf.testing.TestDatabase;

class SowingResultH2Test extends SowingResultContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
