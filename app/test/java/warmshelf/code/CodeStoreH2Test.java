package warmshelf.code;

import warmshelf.testing.TestDatabase;

class CodeStoreH2Test extends CodeStoreContract {
    @Override
    protected TestDatabase open() {
        return TestDatabase.h2();
    }
}
