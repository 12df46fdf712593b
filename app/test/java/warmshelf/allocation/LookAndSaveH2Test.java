package warmshelf.allocation;

import warmshelf.testing.TestDatabase;

class LookAndSaveH2Test extends LookAndSaveContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
