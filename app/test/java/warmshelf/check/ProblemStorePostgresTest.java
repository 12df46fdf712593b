package warmshelf.check;

import warmshelf.testing.TestDatabase;

class ProblemStorePostgresTest extends ProblemStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
