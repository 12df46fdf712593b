package warmshelf.label;

import warmshelf.testing.TestDatabase;

class CodeStorePostgresTest extends CodeStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
