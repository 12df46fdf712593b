package warmshelf.code;

import warmshelf.testing.TestDatabase;

class CodeStorePostgresTest extends CodeStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.postgres();
    }
}
