package warmshelf.check;

import warmshelf.testing.TestDatabase;

class CompostPostgresTest extends CompostContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
