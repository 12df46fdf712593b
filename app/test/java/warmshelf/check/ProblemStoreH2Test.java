package warmshelf.check;

import warmshelf.testing.TestDatabase;

class ProblemStoreH2Test extends ProblemStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
