package warmshelf.check;

import warmshelf.testing.TestDatabase;

class CompostH2Test extends CompostContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
