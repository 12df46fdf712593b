package warmshelf.check;

import warmshelf.testing.TestDatabase;

class LateTickH2Test extends LateTickContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
