package warmshelf.check;

import warmshelf.testing.TestDatabase;

class HeldRackH2Test extends HeldRackContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
