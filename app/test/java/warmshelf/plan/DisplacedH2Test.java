package warmshelf.plan;

import warmshelf.testing.TestDatabase;

class DisplacedH2Test extends DisplacedContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
