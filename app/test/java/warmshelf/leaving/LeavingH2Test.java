package warmshelf.leaving;

import warmshelf.testing.TestDatabase;

class LeavingH2Test extends LeavingContract {
    @Override
    protected TestDatabase database() {
        return TestDatabase.h2();
    }
}
