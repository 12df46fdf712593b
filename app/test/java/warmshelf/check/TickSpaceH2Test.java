package warmshelf.check;

import warmshelf.testing.TestDatabase;

class TickSpaceH2Test extends TickSpaceContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
